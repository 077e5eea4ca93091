//! Lengths and levels in the designer's unit.

use haulout_model::Design;
use haulout_quantity::{System, Unit, print_feet_and_inches, print_fixed, unit};

/// The unit the drawing speaks.
#[derive(Debug, Clone, Copy)]
pub(super) struct Tongue {
    unit: &'static str,
}

impl Tongue {
    /// The unit of the drawing's bare coordinates; metres where none is stated.
    pub(super) fn of(design: &Design) -> Self {
        Tongue { unit: design.drawing.unit.word().unwrap_or("m") }
    }

    /// Metric or US.
    pub(super) fn system(self) -> System {
        if matches!(self.unit, "ft" | "in") { System::Us } else { System::Metric }
    }

    /// A length: to a centimetre, a millimetre or a sixteenth of an inch.
    pub(super) fn length(self, si: f64) -> String {
        match self.system() {
            System::Us if si == 0.0 => "0 ft".to_owned(),
            System::Us => print_feet_and_inches(si),
            _ => self.decimal(si),
        }
    }

    fn decimal(self, si: f64) -> String {
        let (symbol, decimals) = match self.unit {
            "mm" => ("mm", 0),
            "cm" => ("cm", 1),
            _ => ("m", 2),
        };
        unit(symbol).map_or_else(String::new, |unit: &Unit| print_fixed(si, unit, decimals))
    }

    /// A level over the datum, always with its sign.
    pub(super) fn level(self, si: f64) -> String {
        let text = self.length(si);
        if text.starts_with('-') { text } else { format!("+{text}") }
    }
}
