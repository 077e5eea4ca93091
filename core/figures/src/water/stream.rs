//! Figures about a stream: its flow, how deep and how fast it runs, and the water that moves in it.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_calc::hydraulics::channel::{
    CHANNEL_FLOW, NORMAL_DEPTH, NORMAL_DEPTH_SLOPED, SLOPE_OF, STREAM_VELOCITY,
};
use haulout_model::stream::Stream;
use haulout_model::{About, Subject, TrackPoints};
use haulout_quantity::si::{Length, Ratio, Velocity, Volume, VolumeRate};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Axis, Figure, FigureCard, Known, Line, Sheet};

use crate::circuit::duty::DELIVERED_FLOW;

static LENGTH_OF: Formula<(Arc<TrackPoints>,), Length> = Formula {
    card: &card_of("length of a line", "L", "length of the line", &["line"], Kind::Construction),
    run: |(line,)| {
        let pieces = line.0.windows(2).map(|w| {
            let (x, y) = (w[1][0] - w[0][0], w[1][1] - w[0][1]);
            (x * x + y * y).sqrt()
        });
        Ok(Length::from_si(pieces.sum()))
    },
};

static FILM: Formula<(Length, Length, Length, u16), Volume> = Formula {
    card: &card_of(
        "water that moves in a stream",
        "V_film",
        "L × b × d",
        &["L", "b", "d", "kind"],
        Kind::Closed,
    ),
    run: |(length, width, depth, _kind)| Ok(length * width * depth),
};

static NO_FILM: Formula<(u16,), Volume> = Formula {
    card: &card_of(
        "water that moves in a free fall",
        "V_film",
        "nothing worth counting",
        &["kind"],
        Kind::Pick,
    ),
    run: |(_kind,)| Ok(Volume::from_si(0.0)),
};

const fn card_of(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    kind: Kind,
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind,
        basis: Basis::Published,
        source: "arithmetic",
        range: "any numbers",
    }
}

/// Options of the kind of a stream.
const FALL: u16 = 1;

/// The stream of a subject.
pub(crate) fn stream(sheet: Sheet<'_>, at: Subject) -> &Stream {
    &sheet.design().streams.items()[at.index()]
}

const fn card(
    id: &'static str,
    title: &'static str,
    axes: &'static [Axis],
    unit: &'static str,
    us_unit: &'static str,
) -> FigureCard {
    FigureCard { id, title, about: About::Stream, axes, unit, us_unit, resolution: None }
}

/// What runs in it: all that its circuit delivers.
pub static STREAM_FLOW: Figure<Line<VolumeRate>> = Figure {
    card: &card("stream-flow", "flow of the stream", &[Axis::Filter], "m3/h", "gal(US)/min"),
    work: |sheet, at| DELIVERED_FLOW.of(sheet, crate::circuit::named(sheet, &stream(sheet, at).circuit)?),
};

fn length(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    sheet.construct(&LENGTH_OF, (stream(sheet, at).line.on(sheet)?,))
}

fn slope(sheet: Sheet<'_>, at: Subject) -> Known<Line<Ratio>> {
    let lines = (stream(sheet, at).fall.on(sheet), length(sheet, at)).all()?;
    sheet.work(&SLOPE_OF, lines)
}

/// How deep it runs, evenly (Manning).
pub static STREAM_DEPTH: Figure<Line<Length>> = Figure {
    card: &card("stream-depth", "depth of the stream", &[Axis::Filter], "mm", "in"),
    work: |sheet, at| {
        let own = stream(sheet, at);
        let bed = (slope(sheet, at), own.roughness.on(sheet)).all();
        let known = (STREAM_FLOW.of(sheet, at), own.width.on(sheet), bed).all();
        // Sides that are not stated, or a step, are upright.
        if own.side_slope.is_given() {
            let ((flow, width, (slope, n)), side) = (known, own.side_slope.on(sheet)).all()?;
            return sheet.work(&NORMAL_DEPTH_SLOPED, (flow, width, side, slope, n));
        }
        let (flow, width, (slope, n)) = known?;
        let depth = sheet.work(&NORMAL_DEPTH, (flow, width, slope, n))?;
        sheet.check(depth, sheet.work(&CHANNEL_FLOW, (width, depth, slope, n))?, flow);
        Ok(depth)
    },
};

/// How fast it runs; sides that lean back make it slower than this.
pub static STREAM_SPEED: Figure<Line<Velocity>> = Figure {
    card: &card("stream-velocity", "velocity of the stream", &[Axis::Filter], "m/s", "ft/s"),
    work: |sheet, at| {
        let width = stream(sheet, at).width.on(sheet);
        let (flow, width, depth) = (STREAM_FLOW.of(sheet, at), width, STREAM_DEPTH.of(sheet, at)).all()?;
        sheet.work(&STREAM_VELOCITY, (flow, width, depth))
    },
};

/// What moves in it and runs off when the pump stops. What stands behind its steps stays and is not in it.
pub static STREAM_FILM: Figure<Line<Volume>> = Figure {
    card: &card("stream-film", "water that moves in the stream", &[Axis::Filter], "L", "gal(US)"),
    work: |sheet, at| {
        let own = stream(sheet, at);
        let kind = own.kind.on(sheet)?;
        if sheet.option_of(kind) == FALL {
            return sheet.work(&NO_FILM, (kind.option(),));
        }
        let lines = (length(sheet, at), own.width.on(sheet), STREAM_DEPTH.of(sheet, at)).all();
        let (length, width, depth) = lines.map_err(|gaps| gaps.because(kind.id()))?;
        sheet.work(&FILM, (length, width, depth, kind.option()))
    },
};

/// The head over its lip: so much stands over the crest in the water it comes from.
pub static STREAM_LIP_HEAD: Figure<Line<Length>> = Figure {
    card: &card("stream-lip-head", "head over the lip of the stream", &[Axis::Filter], "mm", "in"),
    work: |sheet, at| {
        let lip = &stream(sheet, at).lip;
        let (flow, ()) = (STREAM_FLOW.of(sheet, at), super::lip::is_stated(sheet, lip)).all()?;
        super::lip::head_over(sheet, lip, flow)
    },
};
