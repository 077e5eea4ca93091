//! A sloped zone is wide enough for its bed to come down to the depth stated for it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::beds::{BED_STAYS_ABOVE, is_sloped};
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("zone-reaches-its-depth"),
        title: words("The slopes of a zone meet before its depth is reached"),
        chapter: words("setting-out"),
        demand: Demand::Should,
        stage: Stage::Concept,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Zone,
        caution: None,
        manual: Manual {
            asks: words(
                "A zone with sloped sides is wide enough for its bed to come down to what is stated for it.",
            ),
            why: words(
                "The depth on the drawing is not the depth that gets built: the slopes meet in the middle first.",
            ),
            judged: words(
                "The level at which the slopes meet, from the bed round the zone down, less the stated bed of the zone. Zones with sheer sides always reach their depth.",
            ),
            cure: words("a wider zone, a steeper side, or the depth that can be had"),
        },
    },
    limits: &[&SHORT_OF],
    examples: EXAMPLES,
    judge: |sheet, at| {
        if !is_sloped(sheet, at) {
            return Ok(Check::AllOf(Vec::new()));
        }
        Ok(Check::at_most(BED_STAYS_ABOVE.of(sheet, at)?, sheet.limit(&SHORT_OF)))
    },
};

static SHORT_OF: Limit = Limit {
    rule: "zone-reaches-its-depth",
    name: "short-of",
    row: "",
    what: "height at which the slopes of a zone may meet over its stated bed",
    value: 0.01,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "a bed is laid to a centimetre",
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.20 m down at 1 in 1 in a zone 0.80 m wide"),
        design: words(include_str!("examples/zone_reaches_its_depth_met.json")),
        subject: words("zone:deep"),
        expected: Expected::Met,
        place: words("/pools/0/zones/0/edge"),
    },
    Example {
        shows: words("0.60 m down at 1 in 1 in a zone 0.80 m wide"),
        design: words(include_str!("examples/zone_reaches_its_depth_short.json")),
        subject: words("zone:deep"),
        expected: Expected::Short,
        place: words("/pools/0/zones/0/outline"),
    },
    Example {
        shows: words("0.40 m down at 1 in 1 in a zone 0.80 m wide"),
        design: words(include_str!("examples/zone_reaches_its_depth_edge.json")),
        subject: words("zone:deep"),
        expected: Expected::Met,
        place: words("/pools/0/zones/0/depth"),
    },
    Example {
        shows: words("the depth of the pool round it is not stated"),
        design: words(include_str!("examples/zone_reaches_its_depth_gap.json")),
        subject: words("zone:deep"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/depth"),
    },
    Example {
        shows: words("sheer sides"),
        design: words(include_str!("examples/zone_reaches_its_depth_na.json")),
        subject: words("zone:deep"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("0.4098 m down at 1 in 1 in a zone 0.80 m wide"),
        design: words(include_str!("examples/zone_reaches_its_depth_just_met.json")),
        subject: words("zone:deep"),
        expected: Expected::Met,
        place: words(""),
    },
    Example {
        shows: words("0.4102 m down at 1 in 1 in a zone 0.80 m wide"),
        design: words(include_str!("examples/zone_reaches_its_depth_just_short.json")),
        subject: words("zone:deep"),
        expected: Expected::Short,
        place: words(""),
    },
];
