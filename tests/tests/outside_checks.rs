//! What the formulas give against numbers from outside, the page that lists them, and the formulas nobody checks yet.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::collections::BTreeSet;
use std::fmt::Write;

use haulout_tests::evidence::moved::played;
use haulout_tests::evidence::{held, table};
use haulout_tests::outside::{formulas, rows};
use haulout_tests::{repository, ruleset};

/// Formulas without a row of numbers, with the file and the test that holds them against something from outside.
const TESTED: &[(&str, &str, &str)] = &[
    ("bed with a sheer rim", "core/calc/tests/geometry_bed.rs", "fn a_stepped_pool"),
    ("pump curve", "core/calc/src/hydraulics/tests/curves.rs", "fn head_between_points_and_label"),
    (
        "flow on the label of a pump",
        "core/calc/src/hydraulics/tests/curves.rs",
        "fn head_between_points_and_label",
    ),
    ("device in line", "core/calc/src/hydraulics/tests/pieces.rs", "fn fittings_and_devices"),
    ("pipe run", "core/calc/src/hydraulics/tests/pieces.rs", "fn two_reservoirs_and_a_pipe_that_steps_down"),
    (
        "system curve",
        "core/calc/src/hydraulics/tests/pieces.rs",
        "fn two_reservoirs_and_a_pipe_that_steps_down",
    ),
    (
        "highest level within reach of the barrier",
        "tests/tests/rehearse_barriers.rs",
        "fn a_branch_within_reach",
    ),
    (
        "height of the highest back to stand on",
        "tests/tests/rehearse_barriers.rs",
        "fn a_back_to_stand_on_and_a_sharp_corner",
    ),
    (
        "lowest level a zone reaches",
        "core/calc/src/geometry/reach.rs",
        "fn a_narrow_zone_stops_where_its_slopes_meet",
    ),
    (
        "widest opening between barriers",
        "core/calc/src/geometry/passage.rs",
        "fn the_widest_opening_and_all_of_them",
    ),
    (
        "openings between barriers together",
        "core/calc/src/geometry/passage.rs",
        "fn the_widest_opening_and_all_of_them",
    ),
    (
        "partition to go round",
        "tests/tests/near_water.rs",
        "fn a_socket_on_the_dry_face_of_a_low_front_is_too_near",
    ),
    ("the number is plausible", "core/calc/src/plausible.rs", "fn a_pool_six_metres_deep"),
    (
        "height of the loaded edge of a float over the water",
        "core/calc/src/buoyancy.rs",
        "fn a_heavy_raft_heels_by_its_waterplane",
    ),
    ("area of a site", "tests/tests/sites_by_hand.rs", "fn two_logs_and_a_stump"),
    ("distance to the nearest site", "tests/tests/sites_by_hand.rs", "fn two_logs_and_a_stump"),
    ("plan area under so much water or less", "tests/tests/sites_by_hand.rs", "fn a_shelf_and_a_pit"),
    ("plan area under so much water or more", "tests/tests/sites_by_hand.rs", "fn a_shelf_and_a_pit"),
    ("bed as the eye sees it", "tests/tests/sight_rooms.rs", "fn over_a_rail_through_the_surface"),
    ("guard one does not see through", "tests/tests/sight_rooms.rs", "fn over_a_rail_through_the_surface"),
    (
        "share of the bed seen on ways up to a length",
        "tests/tests/sight_rooms.rs",
        "fn over_a_rail_through_the_surface",
    ),
    ("shortest way in water to the bed", "tests/tests/sight_rooms.rs", "fn over_a_rail_through_the_surface"),
    ("longest way in water to the bed", "tests/tests/sight_rooms.rs", "fn over_a_rail_through_the_surface"),
    (
        "longest way in water to the deep bed",
        "tests/tests/sight_rooms.rs",
        "fn over_a_rail_through_the_surface",
    ),
    (
        "clarity needed to see half of the bed",
        "tests/tests/sight_rooms.rs",
        "fn over_a_rail_through_the_surface",
    ),
    ("share of the bed that nobody sees", "tests/tests/sight_rooms.rs", "fn over_a_rail_through_the_surface"),
    (
        "depth at which the middle of the pool is still seen",
        "tests/tests/sight_rooms.rs",
        "fn how_deep_the_middle_may_be",
    ),
    ("panel in its front", "tests/tests/sight_rooms.rs", "fn a_blind_front_and_the_panel_let_into_it"),
    (
        "barrier one does not see through",
        "tests/tests/sight_rooms.rs",
        "fn a_blind_front_and_the_panel_let_into_it",
    ),
    (
        "share of the deep bed that the lowest eye sees through the panel",
        "tests/tests/sight_rooms.rs",
        "fn a_child_looks_through_a_panel",
    ),
    ("plan area of an outline", "core/calc/tests/geometry.rs", "fn area_length_and_centroid_of_a_gable"),
    ("branch of a circuit", "core/calc/src/hydraulics/branches.rs", "fn the_split_of_cengel_and_cimbala"),
    ("branches side by side", "core/calc/src/hydraulics/branches.rs", "fn the_split_of_cengel_and_cimbala"),
    (
        "a pump and one that stands by",
        "core/calc/src/hydraulics/tests/curves.rs",
        "fn pump_from_a_table_single_in_series_and_side_by_side",
    ),
    ("length of a bank", "core/calc/src/geometry/shore.rs", "fn half_the_longest_stretch_is_found"),
    ("length of a line", "tests/tests/wet_by_hand.rs", "fn the_stream_and_its_film"),
    ("level over the lowest bed", "tests/tests/wet_by_hand.rs", "fn drawn_down"),
    ("the outline is simple", "core/calc/tests/geometry_hostile.rs", "fn crossing_sides_are_named"),
    ("beginning of a start-up", "tests/tests/startup_by_hand.rs", "fn at_the_end_little_is_left"),
    ("courses of a start-up", "core/calc/src/startup/tests.rs", "fn a_library_integrates_the_same"),
    (
        "highest total ammonia after a step",
        "core/calc/src/startup/tests.rs",
        "fn a_step_is_read_until_the_next",
    ),
    ("highest nitrite after a step", "core/calc/src/startup/tests.rs", "fn a_step_is_read_until_the_next"),
    (
        "day from which a step is carried, fastest growth",
        "core/calc/src/startup/tests.rs",
        "fn the_days_are_a_band",
    ),
    (
        "day from which a step is carried, slowest growth",
        "core/calc/src/startup/tests.rs",
        "fn the_days_are_a_band",
    ),
    ("pump curve, smooth", "core/calc/src/hydraulics/smooth.rs", "fn the_cubic_of_a_reference_library"),
    ("loss before the pump", "tests/tests/plumbing_by_hand.rs", "fn the_suction_of_the_filter_loop"),
    ("plan area of a filter", "tests/tests/filtration_by_hand.rs", "fn up_flow_of_the_wetland"),
];

/// Formulas that nothing from outside is held against yet; the list may only shrink.
const NOT_YET: &[&str] = &[
    // Yes or no about words of the file; nothing outside speaks of them, the marked examples do.
    "classed by somebody",
    "every number is plausible",
    "something uses it",
    "the name leads somewhere",
];

#[test]
fn what_is_worked_agrees_with_what_is_printed_elsewhere() {
    let ruleset = ruleset();
    let formulas = formulas(&played(&ruleset.rules), &ruleset);
    let (mut page, mut wrong, mut count) = (String::new(), Vec::new(), 0);
    for (subject, rows) in rows() {
        let mut cells = Vec::new();
        for row in rows {
            count += 1;
            let name =
                [row.formula, row.what].into_iter().filter(|n| !n.is_empty()).collect::<Vec<_>>().join(": ");
            let got = row.got(&formulas).unwrap_or_else(|why| panic!("{name}: {why}"));
            let difference = row.difference(got);
            // A number that is none is wrong too.
            if difference.is_nan() || difference > row.allowed {
                wrong.push(format!("{name}: {got} against {}, off by {difference:e}", row.expected));
            }
            cells.push(vec![
                name,
                row.source.to_owned(),
                row.basis.name().to_owned(),
                format!("{} {}", row.expected, row.unit),
                format!("{got} {}", row.unit),
                format!("{difference:.1e}"),
                format!("{:.0e}", row.allowed),
            ]);
        }
        let heads = ["subject", "source", "basis", "expected", "got", "difference", "allowed"];
        // Writing to a String cannot fail.
        let _ = write!(page, "\n## {subject}\n\n{}", table(&heads, cells));
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    let intro = "Numbers that were not derived from this code, against what it gives. Differences are shares of the expected number, \
                 outright where that is nothing. Yes is 1 and no is 0.";
    held("outside-checks.md", &format!("# Outside checks\n\n{count} checks. {intro}\n{page}"))
        .unwrap_or_else(|why| panic!("{why}"));
}

#[test]
#[allow(clippy::disallowed_methods, reason = "named tests are looked for in the repository")]
fn every_formula_is_checked_against_something_from_outside() {
    let ruleset = ruleset();
    let used: BTreeSet<&str> = formulas(&played(&ruleset.rules), &ruleset).into_keys().collect();
    let in_rows = rows().into_iter().flat_map(|(_, rows)| rows.iter().map(|row| row.formula));
    let mut checked: BTreeSet<&str> = in_rows.collect();
    for (formula, file, test) in TESTED {
        let text = std::fs::read_to_string(repository().join(file)).unwrap_or_default();
        assert!(text.contains(test), "{formula}: {file} has no {test}");
        checked.insert(formula);
    }
    let open: Vec<&str> = used.difference(&checked).copied().collect();
    assert_eq!(open, NOT_YET, "formulas without an outside check: {open:#?}");
}
