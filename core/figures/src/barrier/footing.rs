//! The highest thing an animal can stand on within reach of a barrier: floor, water, rocks, basking sites, tank-mates.

use std::sync::Arc;

use haulout_calc::containment::{ON_A_BACK, highest};
use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_calc::geometry::{Outline, track_to_outline};
use haulout_model::{About, Level, List, Reference, ShapeField, State, Subject, TrackPoints};
use haulout_quantity::si::{Length, Ratio};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{
    All, Assembly, Case, Datum, Entry, Figure, FigureCard, Gap, Known, LevelState, Line, LineId, Sheet,
};

use super::habit::REACH;
use super::{barrier, belongs, shared, space};
use crate::group::{ANIMALS, BODY_HEIGHT};
use crate::pool::level_in_case;

/// Something an animal can stand on: its outline and its level, or the level alone where it lies everywhere.
type Ground = Known<Vec<LineId>>;

static WITHIN_REACH: Assembly<Length> = Assembly {
    card: &FormulaCard {
        name: "highest level within reach of the barrier",
        result: "z_stand",
        text: "the highest of the floors and of what lies within reach of the line of the barrier",
        symbols: &[],
        kind: Kind::Pick,
        basis: Basis::CommonPractice,
        source: "keepers' practice: a wall counts from the highest thing the animal can stand on beside it",
        range: "levels that are stated",
    },
    run: |data| {
        let (track, reach, grounds) = match data {
            [track, reach, grounds @ ..] => (Arc::<TrackPoints>::take(track), Length::take(reach), grounds),
            _ => return Err(Refusal::new("a footing needs a line and a reach")),
        };
        // What lies just as far as the animal reaches is within reach, in feet as in metres.
        let near = |outline: &Datum| {
            let outline = Arc::<Outline>::take(outline);
            track_to_outline(&track.0, &outline) <= reach.value * (1.0 + 1e-9) + 1e-9
        };
        let mut levels = Vec::new();
        let mut rest = grounds;
        while let [first, others @ ..] = rest {
            rest = others;
            match (first, others) {
                (Datum::Number(level), _) => levels.push(*level),
                (Datum::Thing(_), [level, beyond @ ..]) => {
                    rest = beyond;
                    levels.extend(near(first).then(|| Length::take(level).value));
                }
                (Datum::Thing(_), []) => return Err(Refusal::new("an outline needs its level")),
            }
        }
        highest(levels.into_iter()).map(Length::from_si)
    },
};

static BACKS: Assembly<Length> = Assembly {
    card: &FormulaCard {
        name: "height of the highest back to stand on",
        result: "h_back",
        text: "the highest standing animal of the others in the space, nothing for one that is alone",
        symbols: &[],
        kind: Kind::Pick,
        basis: Basis::CommonPractice,
        source: "keepers' practice: animals stand on each other",
        range: "groups of known number",
    },
    // Height and number by group, the own group first: an animal does not stand on its own back.
    run: |data| {
        let pairs: Vec<(f64, f64)> =
            data.chunks_exact(2).map(|d| (Length::take(&d[0]).value, Ratio::take(&d[1]).value)).collect();
        let back = |(at, (height, number)): (usize, &(f64, f64))| {
            let others = if at == 0 { number - 1.0 } else { *number };
            if others > 0.5 { *height } else { 0.0 }
        };
        let highest = pairs.iter().enumerate().map(back).fold(0.0, f64::max);
        Ok(Length::from_si(highest))
    },
};

const fn card(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard {
        id,
        title,
        about: About::BarrierGroup,
        axes: &[],
        unit: "m",
        us_unit: "ft",
        resolution: Some("curves flattened to 5 mm"),
    }
}

fn parts(at: Subject) -> (Subject, Subject) {
    let part = |about| at.part(about).expect("a barrier-group has a barrier and a group");
    (part(About::Barrier), part(About::Group))
}

/// A list that must be stated, even if only to say that there is none.
fn stated<T>(list: &List<T>) -> Known<&[T]> {
    match list.state() {
        State::Given(_) | State::None => Ok(list.items()),
        State::Absent | State::Undecided => {
            Err(haulout_sheet::Gaps(list.missing().map(Gap::from).into_iter().collect()))
        }
    }
}

fn ground(sheet: Sheet<'_>, outline: &ShapeField, level: Known<Line<Length>>) -> Ground {
    let (outline, level) = (crate::outline(sheet, outline), level).all()?;
    Ok(vec![outline.id(), level.id()])
}

fn standing(sheet: Sheet<'_>, outline: &ShapeField, level: &Level) -> Ground {
    ground(sheet, outline, crate::level(sheet, level))
}

fn floors(sheet: Sheet<'_>, spaces: &[&Reference]) -> Vec<Ground> {
    let floor = |name: &&Reference| {
        let level = crate::level(sheet, &space(sheet, name)?.floor_level)?;
        Ok(vec![level.id()])
    };
    spaces.iter().map(floor).collect()
}

/// Water at its high level, and beds that are given as levels: an island is dry.
fn waters(sheet: Sheet<'_>, spaces: &[&Reference]) -> Known<Vec<Ground>> {
    let high = sheet.in_case(Case::NORMAL.level(LevelState::High));
    let mut found = Vec::new();
    for (index, pool) in stated(&sheet.design().pools)?.iter().enumerate() {
        if !belongs(sheet, pool.space.given(), spaces) {
            continue;
        }
        let at = Subject::nth(About::Pool, index);
        found.push(ground(sheet, &pool.outline, level_in_case(high, at)));
        let islands = pool.zones.items().iter().filter(|z| z.bed.state().given().is_some());
        found.extend(islands.map(|z| standing(sheet, &z.outline, &z.bed)));
    }
    Ok(found)
}

fn features(sheet: Sheet<'_>, spaces: &[&Reference]) -> Known<Vec<Ground>> {
    let listed = stated(&sheet.design().features)?;
    let here = listed.iter().filter(|f| belongs(sheet, f.space.given(), spaces));
    Ok(here.map(|f| standing(sheet, &f.outline, &f.top)).collect())
}

fn basking(sheet: Sheet<'_>, spaces: &[&Reference]) -> Known<Vec<Ground>> {
    let listed = stated(&sheet.design().basking)?;
    let here = listed.iter().filter(|b| belongs(sheet, b.space.given(), spaces));
    Ok(here.map(|b| standing(sheet, &b.outline, &b.level)).collect())
}

/// The highest level an animal of the group can stand on within reach of the barrier, tank-mates aside.
pub static STANDING_LEVEL: Figure<Line<Length>> = Figure {
    card: &card("standing-level", "highest standing level within reach of the barrier"),
    work: |sheet, at| {
        let (barrier_at, group_at) = parts(at);
        let spaces = shared(sheet, barrier_at, group_at)?;
        let (track, reach) = (barrier(sheet, barrier_at).line.on(sheet), REACH.of(sheet, group_at)).all()?;
        let lists = vec![waters(sheet, &spaces), features(sheet, &spaces), basking(sheet, &spaces)].all()?;
        let grounds: Vec<Ground> = lists.into_iter().flatten().chain(floors(sheet, &spaces)).collect();
        let head = [track.id(), reach.id()];
        let lines: Vec<LineId> = head.into_iter().chain(grounds.all()?.into_iter().flatten()).collect();
        sheet.assemble(&WITHIN_REACH, &lines)
    },
};

/// Standing height of the highest tank-mate in the spaces the barrier bounds; nothing for an animal that is alone.
pub static COMPANION_BACK: Figure<Line<Length>> = Figure {
    card: &card("companion-back", "highest back of a tank-mate"),
    work: |sheet, at| {
        let (barrier_at, group_at) = parts(at);
        let spaces = shared(sheet, barrier_at, group_at)?;
        let lives = |index: usize| {
            let own = &sheet.design().animals.items()[index].spaces;
            own.missing().is_some() || own.items().iter().any(|s| spaces.iter().any(|t| t.name() == s.name()))
        };
        let count = sheet.design().animals.items().len();
        let others = (0..count).filter(|i| *i != group_at.index() && lives(*i));
        let all = std::iter::once(group_at).chain(others.map(|i| Subject::nth(About::Group, i)));
        let each = |g: Subject| {
            let (height, number) = (BODY_HEIGHT.of(sheet, g), ANIMALS.of(sheet, g)).all()?;
            Ok(vec![height.id(), number.id()])
        };
        let lines: Vec<Ground> = all.map(each).collect();
        let lines: Vec<LineId> = lines.all()?.into_iter().flatten().collect();
        sheet.assemble(&BACKS, &lines)
    },
};

/// The highest footing: a tank-mate's back at the highest standing level.
pub static FOOTING: Figure<Line<Length>> = Figure {
    card: &card("footing", "highest footing at the barrier, a tank-mate's back included"),
    work: |sheet, at| {
        let lines = (STANDING_LEVEL.of(sheet, at), COMPANION_BACK.of(sheet, at)).all()?;
        sheet.work(&ON_A_BACK, lines)
    },
};
