//! The one form of a unit's spelling: m³/h, m^3 / h and "m3 per hour" are all `m3/h`.

/// A spelling in its one form, on the stack: units are read too often to allocate for each.
pub(crate) struct Spelling {
    bytes: [u8; 48],
    len: usize,
    word: usize,
    gap: bool,
    country: Option<&'static str>,
    too_long: bool,
}

/// Words for a unit, and what stands for them; applied to whole words.
const WORDS: &[(&str, &str)] = &[
    ("l", "L"),
    ("litre", "L"),
    ("liter", "L"),
    ("litres", "L"),
    ("liters", "L"),
    ("ml", "mL"),
    ("metre", "m"),
    ("meter", "m"),
    ("metres", "m"),
    ("meters", "m"),
    ("foot", "ft"),
    ("feet", "ft"),
    ("inch", "in"),
    ("inches", "in"),
    ("yard", "yd"),
    ("yards", "yd"),
    ("sec", "s"),
    ("second", "s"),
    ("seconds", "s"),
    ("minute", "min"),
    ("minutes", "min"),
    ("mins", "min"),
    ("hr", "h"),
    ("hrs", "h"),
    ("hour", "h"),
    ("hours", "h"),
    ("day", "d"),
    ("days", "d"),
    ("week", "wk"),
    ("weeks", "wk"),
    ("gallon", "gal"),
    ("gallons", "gal"),
    ("gals", "gal"),
    ("Imp", "UK"),
    ("imp", "UK"),
    ("imperial", "UK"),
    ("lbs", "lb"),
    ("pound", "lb"),
    ("pounds", "lb"),
    ("ounce", "oz"),
    ("ounces", "oz"),
    ("tons", "ton"),
    ("tonne", "t"),
    ("tonnes", "t"),
    ("gram", "g"),
    ("grams", "g"),
    ("degree", "deg"),
    ("degrees", "deg"),
    ("volt", "V"),
    ("volts", "V"),
    ("watt", "W"),
    ("watts", "W"),
    ("amp", "A"),
    ("amps", "A"),
    ("Btu", "Btu(IT)"),
    ("BTU", "Btu(IT)"),
    ("per", "/"),
    ("HP", "hp"),
];

impl Spelling {
    /// Brings a spelling to its form; `None` when it is longer than any unit's.
    pub(crate) fn of(text: &str) -> Option<Self> {
        let mut form =
            Spelling { bytes: [0; 48], len: 0, word: 0, gap: false, country: None, too_long: false };
        for c in text.chars() {
            form.take(c);
        }
        form.end_word(false);
        (!form.too_long).then_some(form)
    }

    pub(crate) fn as_bytes(&self) -> &[u8] {
        &self.bytes[..self.len]
    }

    fn take(&mut self, c: char) {
        let plain = match c {
            '²' => '2',
            '³' => '3',
            'µ' | 'μ' => 'u',
            'º' | '˚' => '°',
            '′' | '’' | '‘' => '\'',
            '″' | '”' | '“' => '"',
            '·' | '⋅' | '*' | '.' => ' ',
            other => other,
        };
        if plain.is_whitespace() {
            self.end_word(true);
            self.gap = true;
            return;
        }
        if plain == '^' {
            return;
        }
        let letter = plain.is_alphabetic();
        if !letter {
            self.end_word(false);
        }
        if self.gap && (letter || plain == '°') && self.ends_in_unit() {
            self.push(".");
        }
        if self.gap || self.word > self.len {
            self.word = self.len;
        }
        self.gap = false;
        self.push(plain.encode_utf8(&mut [0; 4]));
        if !letter {
            self.word = self.len;
        }
    }

    fn ends_in_unit(&self) -> bool {
        self.as_bytes().last().is_some_and(|b| b.is_ascii_alphanumeric() || *b == b')')
    }

    /// A word is complete: its short form takes its place, and a country in front ("US gal") goes behind.
    fn end_word(&mut self, at_gap: bool) {
        if self.word >= self.len {
            return;
        }
        let word = &self.bytes[self.word..self.len];
        let short = WORDS.iter().find(|(long, _)| long.as_bytes() == word).map(|(_, short)| *short);
        if let Some(short) = short {
            self.len = self.word;
            if short == "/" && self.as_bytes().last() == Some(&b'.') {
                self.len -= 1;
            }
            self.push(short);
        }
        let country = if &self.bytes[..self.len] == b"US" { "(US)" } else { "(UK)" };
        if at_gap && self.word == 0 && matches!(self.as_bytes(), b"US" | b"UK") {
            self.country = Some(country);
            self.len = 0;
        } else if let Some(country) = self.country.take_if(|_| self.bytes[..self.len] != *b"fl") {
            self.push(country);
        }
        self.word = self.len;
    }

    fn push(&mut self, text: &str) {
        match self.bytes.get_mut(self.len..self.len + text.len()) {
            Some(room) => {
                room.copy_from_slice(text.as_bytes());
                self.len += text.len();
            }
            None => self.too_long = true,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Spelling;

    #[test]
    fn spellings_of_one_unit_have_one_form() {
        let table: &[(&str, &[&str])] = &[
            ("m3/h", &["m³/h", "m^3/h", "m3 / h", "m3 per hour", "m³ per hr", "m3/hour"]),
            ("gal(US)/h", &["gal (US) / h", "US gal/h", "US gallons per hour", "gal(US) per hour"]),
            ("gal(UK)/min", &["imp gal/min", "gal(imp)/min", "UK gallons per minute"]),
            ("gpm(US)", &["US gpm", "gpm (US)"]),
            ("fl.oz(US)", &["US fl oz", "fl oz (US)", "fl. oz(US)"]),
            ("W/(m2.K)", &["W/(m² K)", "W/(m²·K)", "W / (m^2 * K)"]),
            ("umol/m2/s", &["µmol/m²/s", "μmol / m2 / s"]),
            ("kN.m", &["kN m", "kN·m"]),
            ("/h", &["per hour", "/ h", "/hr"]),
            ("m.of.water", &["m of water", "metres of water"]),
        ];
        for (form, spellings) in table {
            for spelling in *spellings {
                let got = Spelling::of(spelling).expect("short");
                assert_eq!(String::from_utf8_lossy(got.as_bytes()), *form, "{spelling}");
            }
        }
    }

    #[test]
    fn what_is_longer_than_any_unit_has_no_form() {
        assert!(Spelling::of(&"m".repeat(200)).is_none());
    }
}
