//! Choices that the database and forms know by their names.

/// Gives a choice, which derives strum's `EnumString`, `IntoStaticStr` and `VariantArray`, its names: `ALL`, `name`, `parse`.
macro_rules! named {
    ($choice:ident) => {
        impl $choice {
            /// All of them, in the order they are shown.
            pub const ALL: &'static [Self] = <Self as ::strum::VariantArray>::VARIANTS;

            /// Its name in the database and in forms.
            #[must_use]
            pub fn name(self) -> &'static str {
                self.into()
            }

            /// The one of that name.
            #[must_use]
            pub fn parse(name: &str) -> Option<Self> {
                name.parse().ok()
            }
        }
    };
}
pub(crate) use named;
