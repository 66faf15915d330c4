use leeward_core::wire::Device;

/// A laptop's screen at 60 cm.
pub fn device() -> Device {
    Device {
        width_px: 1440.0,
        height_px: 900.0,
        px_per_mm: Some(4.4),
        distance_mm: Some(600.0),
        reduced_motion: false,
        sound: true,
        sides: None,
        vibration: false,
        wake_lock: true,
        full_screen: true,
        checking: false,
    }
}
