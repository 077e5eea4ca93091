//! States, size and authority are axes of a case, not parts of names.

/// State of filters and screens.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Filter {
    /// Just cleaned.
    #[default]
    Clean,
    /// Due for cleaning.
    Dirty,
}

/// State of the pumps.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Pumps {
    /// Running.
    #[default]
    On,
    /// Stopped.
    Off,
}

/// Which level the water stands at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum LevelState {
    /// Normal.
    #[default]
    Water,
    /// Lowest running level.
    Low,
    /// As high as the overflow lets it.
    High,
}

/// Which size of the animals.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Size {
    /// Full-grown.
    #[default]
    Grown,
    /// The smallest ever kept.
    Smallest,
    /// At present.
    Now,
}

/// An axis of a case.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Axis {
    /// [`Filter`].
    Filter,
    /// [`Pumps`].
    Pumps,
    /// [`LevelState`].
    Level,
    /// [`Size`].
    Size,
    /// The authority in question.
    Authority,
}

/// The states a number is worked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct Case {
    /// Filters and screens.
    pub filter: Filter,
    /// Pumps.
    pub pumps: Pumps,
    /// Level.
    pub level: LevelState,
    /// Size of the animals.
    pub size: Size,
    /// Position of the authority in the table of authorities.
    pub authority: Option<u16>,
}

impl Case {
    /// The normal state: clean, running, normal level, full-grown.
    pub const NORMAL: Case = Case {
        filter: Filter::Clean,
        pumps: Pumps::On,
        level: LevelState::Water,
        size: Size::Grown,
        authority: None,
    };

    /// The same with dirty filters.
    pub const fn dirty(mut self) -> Self {
        self.filter = Filter::Dirty;
        self
    }

    /// The same at another level.
    pub const fn level(mut self, level: LevelState) -> Self {
        self.level = level;
        self
    }

    /// The same for another size.
    pub const fn size(mut self, size: Size) -> Self {
        self.size = size;
        self
    }

    /// What is left of the case when only some axes matter, so that a volume is worked once for all authorities.
    pub fn only(self, axes: &[Axis]) -> Self {
        if axes.is_empty() {
            return Case::NORMAL;
        }
        let keep = |axis| axes.contains(&axis);
        Case {
            filter: if keep(Axis::Filter) { self.filter } else { Filter::Clean },
            pumps: if keep(Axis::Pumps) { self.pumps } else { Pumps::On },
            level: if keep(Axis::Level) { self.level } else { LevelState::Water },
            size: if keep(Axis::Size) { self.size } else { Size::Grown },
            authority: if keep(Axis::Authority) { self.authority } else { None },
        }
    }

    /// The case as one number; different cases have different ones.
    pub(crate) const fn packed(self) -> u32 {
        let authority = match self.authority {
            Some(at) => at as u32 + 1,
            None => 0,
        };
        let states = self.filter as u32 | (self.pumps as u32) << 1 | (self.level as u32) << 2;
        states | (self.size as u32) << 4 | authority << 6
    }

    /// Every case the axes allow, the authority left out: the chosen ones come from the design.
    pub fn each(axes: &[Axis]) -> Vec<Case> {
        let mut cases = vec![Case::NORMAL];
        for axis in axes {
            cases = match axis {
                Axis::Filter => cases.iter().flat_map(|c| [*c, c.dirty()]).collect(),
                Axis::Pumps => cases.iter().flat_map(|c| [*c, Case { pumps: Pumps::Off, ..*c }]).collect(),
                Axis::Level => cases
                    .iter()
                    .flat_map(|c| [*c, c.level(LevelState::Low), c.level(LevelState::High)])
                    .collect(),
                Axis::Size => {
                    cases.iter().flat_map(|c| [*c, c.size(Size::Smallest), c.size(Size::Now)]).collect()
                }
                Axis::Authority => cases,
            };
        }
        cases
    }

    /// The states that differ from normal, as words: `filter dirty`, `level low`.
    pub fn words(self) -> Vec<&'static str> {
        let mut words = Vec::new();
        if self.filter == Filter::Dirty {
            words.push("filter dirty");
        }
        if self.pumps == Pumps::Off {
            words.push("pumps off");
        }
        match self.level {
            LevelState::Water => {}
            LevelState::Low => words.push("level low"),
            LevelState::High => words.push("level high"),
        }
        match self.size {
            Size::Grown => {}
            Size::Smallest => words.push("smallest animals"),
            Size::Now => words.push("animals at present"),
        }
        words
    }
}
