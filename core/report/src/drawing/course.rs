//! The course of a start-up as a chart: ammonia, nitrite and nitrate over the days, each a band from slow to fast growth.

use haulout_calc::startup::course::Day;

use super::style::{Fill, Stroke};
use super::svg::{Anchor, Mm, Svg, Weight, closed_path, number, open_path};
use crate::course::{MILLIGRAMS, Started, band, last_day};

const SHEET: Mm = [297.0, 210.0];
const LEFT: f64 = 38.0;
const RIGHT: f64 = 287.0;
const TOP: f64 = 40.0;
const HIGH: f64 = 42.0;
const GAP: f64 = 10.0;

/// One of the three panels.
struct Panel {
    name: &'static str,
    of: fn(&Day) -> f64,
    target: Option<f64>,
}

/// The chart, ISO A4 landscape in millimetres; the same bytes for the same courses on every machine.
pub fn chart(chart: &Started) -> String {
    let told = "Days against milligrams a litre, as nitrogen. Screening result: readings decide, not days.";
    let heading = format!("{}: start-up of the water of {}", chart.title, chart.water);
    let mut svg = Svg::open(SHEET, &heading, told);
    svg.rectangle([0.0, 0.0], SHEET, Fill::PAPER, Stroke::NONE);
    svg.text([LEFT, 13.0], 5.0, Anchor::Start, Weight::Bold, &heading);
    let words = "Grey: between slow and fast growth of the bacteria. Line: middle growth. Dashes: target at which the next step waits.";
    svg.text([LEFT, 19.0], 3.0, Anchor::Start, Weight::Plain, words);
    let panels = [
        Panel { name: "Total ammonia", of: |day| day.tan, target: chart.targets[0] },
        Panel { name: "Nitrite", of: |day| day.nitrite, target: chart.targets[1] },
        Panel { name: "Nitrate", of: |day| day.nitrate, target: None },
    ];
    for (at, panel) in panels.iter().enumerate() {
        draw(chart, panel, TOP + at as f64 * (HIGH + GAP), &mut svg);
    }
    steps(chart, &mut svg);
    svg.text(
        [0.5 * (LEFT + RIGHT), 198.0],
        3.2,
        Anchor::Middle,
        Weight::Plain,
        "days after the filter is started",
    );
    let words = "All as nitrogen. Screening result: constants of growth scatter by two to three. A step waits for its readings, not for its day.";
    svg.text([LEFT, 205.0], 2.8, Anchor::Start, Weight::Plain, words);
    svg.close()
}

fn x(chart: &Started, day: f64) -> f64 {
    LEFT + (RIGHT - LEFT) * day / last_day(chart)
}

/// The step of an axis that divides it into two to five parts: 1, 2 or 5 by a power of ten.
fn division(most: f64) -> f64 {
    let mut step = 1e-3;
    loop {
        for by in [1.0, 2.0, 5.0] {
            if most <= 5.0 * by * step {
                return by * step;
            }
        }
        step *= 10.0;
        if step > 1e9 {
            return step;
        }
    }
}

fn draw(chart: &Started, panel: &Panel, top: f64, svg: &mut Svg) {
    let band = band(chart, panel.of);
    let target = panel.target.map(|target| target * MILLIGRAMS);
    let most = band.iter().map(|b| b[2]).fold(target.unwrap_or(0.0), f64::max).max(1e-3);
    let step = division(most);
    let full = (most / step).ceil() * step;
    let y = |value: f64| top + HIGH - HIGH * value / full;
    svg.text([6.0, top + 6.0], 3.0, Anchor::Start, Weight::Bold, panel.name);
    svg.text([6.0, top + 10.0], 2.8, Anchor::Start, Weight::Plain, "mg/L");
    let parts = (full / step).round() as usize;
    for part in 0..=parts {
        let value = part as f64 * step;
        svg.line([LEFT, y(value)], [RIGHT, y(value)], Stroke::LEADER);
        let printed = number(value);
        let left = LEFT - 1.5 - super::svg::width(&printed, 2.8);
        svg.text([left, y(value) + 1.0], 2.8, Anchor::Start, Weight::Plain, &printed);
    }
    let place = |at: usize, which: usize| [x(chart, at as f64), y(band[at][which])];
    let up: Vec<Mm> = (0..band.len()).map(|at| place(at, 2)).collect();
    let down = (0..band.len()).rev().map(|at| place(at, 0));
    let ring: Vec<Mm> = up.iter().copied().chain(down).collect();
    svg.path(&closed_path(&[ring]), Fill("#c8c8c8"), Stroke::NONE, panel.name);
    let middle: Vec<Mm> = (0..band.len()).map(|at| place(at, 1)).collect();
    svg.path(&open_path(&middle), Fill::NONE, Stroke::POOL, "");
    if let Some(target) = target {
        svg.line([LEFT, y(target)], [RIGHT, y(target)], Stroke::GUARD);
        svg.text(
            [RIGHT - 22.0, y(target) - 1.0],
            2.8,
            Anchor::Start,
            Weight::Plain,
            &format!("target {}", number(target)),
        );
    }
    svg.rectangle([LEFT, top], [RIGHT - LEFT, HIGH], Fill::NONE, Stroke::THIN);
    let days = last_day(chart);
    let every = division(days).max(1.0);
    let mut day = 0.0;
    while day <= days {
        svg.line([x(chart, day), top + HIGH], [x(chart, day), top + HIGH + 1.2], Stroke::THIN);
        svg.text([x(chart, day), top + HIGH + 4.4], 2.8, Anchor::Middle, Weight::Plain, &number(day));
        day += every;
    }
}

/// A line down all panels on the day of each step; words of one day share it.
fn steps(chart: &Started, svg: &mut Svg) {
    let bottom = TOP + 3.0 * HIGH + 2.0 * GAP;
    let mut rows = [f64::NEG_INFINITY; 3];
    let mut drawn: Vec<f64> = Vec::new();
    for step in &chart.steps {
        if drawn.contains(&step.day) || step.day > last_day(chart) {
            continue;
        }
        drawn.push(step.day);
        let own: Vec<&str> = chart
            .steps
            .iter()
            .filter(|other| other.day == step.day)
            .map(|other| other.words.as_str())
            .collect();
        let words = format!("day {}: {}", number(step.day), own.join("; "));
        let at = x(chart, step.day);
        // The first row whose last words end before these begin; the last row where none does.
        let row = rows.iter().position(|end| *end < at).unwrap_or(rows.len() - 1);
        let high = 24.0 + 4.0 * row as f64;
        rows[row] = at + super::svg::width(&words, 2.8);
        svg.line([at, high + 0.6], [at, bottom], Stroke::CONTOUR);
        svg.text([at + 0.8, high], 2.8, Anchor::Start, Weight::Plain, &words);
    }
}

#[cfg(test)]
mod tests {
    use super::{chart, division};
    use crate::course::Step;
    use crate::course::tests::started;

    #[test]
    fn axes_have_two_to_five_parts() {
        for most in [0.0012, 0.9, 1.0, 4.2, 9.26, 31.0, 160.0] {
            let parts = (most / division(most)).ceil();
            assert!((2.0..=5.0).contains(&parts), "{most}: {parts}");
        }
        assert!((division(9.26) - 2.0).abs() < 1e-12);
    }

    #[test]
    fn hostile_words_stay_words_and_the_chart_says_what_it_is() {
        let mut started = started();
        started.title = "\"x\"<".to_owned();
        started.steps =
            vec![Step { day: 14.0, words: "<b>&all".to_owned() }, Step { day: 900.0, words: String::new() }];
        let svg = chart(&started);
        assert!(svg.contains("&lt;b&gt;&amp;all") && !svg.contains("<b>"));
        assert!(svg.contains("target 0.5") && svg.contains("Screening result"));
        assert!(!svg.contains("NaN") && !svg.contains("day 900"));
    }
}
