//! Limits by example and against WCAG 2.2.

use super::*;
use proptest::prelude::*;

fn words(result: Result<(), Refusal>) -> String {
    match result {
        Err(Refusal::Limit { limit }) => limit,
        other => panic!("expected a limit, got {other:?}"),
    }
}

#[test]
fn the_default_plan_is_allowed() {
    assert_eq!(check(&default_plan(), false), Ok(()));
}

#[test]
fn the_cautions_lock_the_eyes_and_not_the_ears() {
    assert_eq!(check(&default_plan(), true), Err(Refusal::EyesLocked));
    let ears = Plan { channels: Channels { eyes: false, ears: true, hands: false }, ..default_plan() };
    assert_eq!(check(&ears, true), Ok(()));
}

#[test]
fn no_channel_at_all_is_refused() {
    let none = Plan { channels: Channels { eyes: false, ears: false, hands: false }, ..default_plan() };
    assert_eq!(words(check(&none, false)), "Choose eyes, ears or hands.");
}

#[test]
fn figures_outside_their_range_are_refused_in_words() {
    let plan = default_plan();
    for rate in [0.29, 2.01, -1.0, 0.0, f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert_eq!(words(check(&Plan { rate, ..plan }, false)), "The rate must be between 0.3 and 2 Hz.");
    }
    for width in [1.9, 40.1, f64::NAN] {
        assert_eq!(words(check(&Plan { width, ..plan }, false)), "The width must be between 2 and 40 degrees.");
    }
    for dot in [0.0, 3.1, f64::NAN] {
        assert_eq!(words(check(&Plan { dot, ..plan }, false)), "The dot must be between 0.3 and 3 degrees.");
    }
}

#[test]
fn a_large_dot_may_not_be_fast() {
    let plan = Plan { rate: 1.6, dot: 2.1, ..default_plan() };
    assert_eq!(words(check(&plan, false)), "Above 1.5 Hz the dot must be 2 degrees or smaller.");
    assert_eq!(check(&Plan { dot: 2.0, ..plan }, false), Ok(()));
    assert_eq!(check(&Plan { rate: 1.5, ..plan }, false), Ok(()));
}

// Each side lights once a cycle, so both together light 2·rate times a second.
#[test]
fn hands_may_not_light_more_than_three_times_a_second() {
    let hands = Plan { channels: Channels { eyes: false, ears: false, hands: true }, ..default_plan() };
    assert_eq!(check(&Plan { rate: 1.5, ..hands }, false), Ok(()));
    assert!(words(check(&Plan { rate: 1.51, ..hands }, false)).starts_with("With taps the rate must be 1.5 Hz or less"));
}

#[test]
fn tones_out_of_range_are_refused_in_words() {
    let with = |comfort| words(check(&Plan { comfort, ..default_plan() }, false));
    let usual = Comfort::default();
    for pitch in [0, 199, 1_001, u16::MAX] {
        assert_eq!(with(Comfort { pitch, ..usual }), "The pitch of the tones must be between 200 and 1000 Hz.");
    }
    for tone_ms in [0, 39, 201, u16::MAX] {
        assert_eq!(with(Comfort { tone_ms, ..usual }), "The length of a tone must be between 40 and 200 ms.");
    }
    for level in [0, 4, 101, u8::MAX] {
        assert_eq!(with(Comfort { level, ..usual }), "The level of the tones must be between 5 and 100 percent.");
    }
}

// Rows and messages from before there was a choice: no hands, no comfort.
#[test]
fn an_older_plan_still_reads() {
    let older = r#"{"rate":1.0,"width":18.0,"dot":1.5,"path":"across","length":{"kind":"cycles","cycles":24},"channels":{"eyes":true,"ears":false}}"#;
    assert_eq!(serde_json::from_str::<Plan>(older).expect("a plan"), default_plan());
    // One figure left out of the comfort is the usual one.
    let partly: Comfort = serde_json::from_str(r#"{"pitch":300}"#).expect("a comfort");
    assert_eq!(partly, Comfort { pitch: 300, ..Comfort::default() });
}

#[test]
fn too_many_cycles_or_too_long_a_time_is_refused() {
    let plan = default_plan();
    for cycles in [0, 201, u32::MAX] {
        let length = Length::Cycles(cycles);
        assert_eq!(words(check(&Plan { length, ..plan }, false)), "A set must have 1 to 200 cycles.");
    }
    let slow = Plan { rate: 0.5, length: Length::Cycles(180), ..plan };
    assert_eq!(words(check(&slow, false)), "A set may last 360 seconds at most; this one would last 361.");
}

// 24 cycles last 30, 24 and 20 s at 0.8, 1.0 and 1.2 Hz (van Veen 2015 for the rates), here
// with one second more for the ramps, which are ours.
#[test]
fn the_time_of_a_set_agrees_with_arithmetic() {
    for (rate, seconds) in [(0.8, 30.0), (1.0, 24.0), (1.2, 20.0)] {
        assert!((set_ms(24, rate) - (seconds + 1.0) * 1_000.0).abs() < 1e-6);
    }
}

#[test]
fn a_screen_refuses_what_it_cannot_show() {
    let plan = default_plan();
    assert_eq!(check_screen(&plan, 18.0), Ok(()));
    assert_eq!(check_screen(&plan, 12.5), Err(Refusal::TooWide { widest: 12.5 }));
    let ears = Plan { channels: Channels { eyes: false, ears: true, hands: false }, ..plan };
    assert_eq!(check_screen(&ears, 12.5), Ok(()));
}

// WCAG 2.2, 2.3.1: at most three flashes in any one second.
#[test]
fn blinking_stops_at_three_a_second() {
    assert!(may_blink(1.5));
    assert!(!may_blink(1.51));
}

proptest! {
    // WCAG 2.2, 2.3.1: three flashes in any one second, or no more than 0.006 sr.
    #[test]
    fn every_allowed_dot_passes_by_count_or_by_area(rate in 0.0..3.0f64, dot in 0.0..6.0f64) {
        let plan = Plan { rate, dot, length: Length::Open, ..default_plan() };
        if check(&plan, false).is_ok() {
            let crossings = 2.0 * rate;
            prop_assert!(
                crossings <= FLASHES_PER_SECOND || optics::disc_sr(dot) <= FLASH_AREA_SR
            );
        }
    }
}
