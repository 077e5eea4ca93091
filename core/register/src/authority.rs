//! The table of authorities: what a design may be held to, matter by matter.

/// The matters a design chooses authorities for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Matter {
    /// Welfare schemes: sizes, depths, temperatures.
    Welfare,
    /// Electrical separation near water.
    Electrical,
    /// Guards for visitors.
    Guards,
}

impl Matter {
    /// The key under `held-to`.
    pub const fn name(self) -> &'static str {
        match self {
            Matter::Welfare => "welfare",
            Matter::Electrical => "electrical",
            Matter::Guards => "guards",
        }
    }
}

/// A law, standard or scheme.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Authority {
    /// The id a design uses.
    pub id: &'static str,
    /// Its matter.
    pub matter: Matter,
    /// Title.
    pub title: &'static str,
    /// Edition.
    pub edition: &'static str,
    /// Year.
    pub year: u16,
    /// What it was made for, where that limits what it says about an exhibit.
    pub scope: &'static str,
}

/// Everything the rules know how to hold a design to.
pub const AUTHORITIES: &[Authority] = &[
    Authority {
        id: "eu-2010-63",
        matter: Matter::Welfare,
        title: "Directive 2010/63/EU, Annex III, Section B, division 10 (reptiles)",
        edition: "values in force from 1 January 2017",
        year: 2010,
        scope: "animals used for scientific purposes; for an exhibit a floor, not a target",
    },
    Authority {
        id: "de-1997",
        matter: Matter::Welfare,
        title: "Mindestanforderungen an die Haltung von Reptilien (expert opinion for the German federal ministry)",
        edition: "10 January 1997",
        year: 1997,
        scope: "private and zoo keeping; multiples of shell length and breadth",
    },
    Authority {
        id: "uk-ad-k",
        matter: Matter::Guards,
        title: "Approved Document K, Protection from falling, collision and impact (England)",
        edition: "2013 edition",
        year: 2013,
        scope: "guidance to the building regulations; building control has the last word",
    },
    Authority {
        id: "ibc-2021",
        matter: Matter::Guards,
        title: "International Building Code, section 1015 (guards)",
        edition: "2021 edition",
        year: 2021,
        scope: "model code; the authority having jurisdiction adopts and amends it",
    },
    Authority {
        id: "iec-702",
        matter: Matter::Electrical,
        title: "IEC 60364-7-702 / HD 60364-7-702 (swimming pools and fountains)",
        edition: "2010",
        year: 2010,
        scope: "basins of swimming and paddling pools and of fountains; whether an animal pool is one is the electrical designer's decision",
    },
    Authority {
        id: "nec-680",
        matter: Matter::Electrical,
        title: "NFPA 70 (National Electrical Code), article 680, as in the 2022 California Electrical Code",
        edition: "2020",
        year: 2020,
        scope: "swimming pools, fountains and similar; other bodies of water fall under article 682, which is not judged",
    },
];
