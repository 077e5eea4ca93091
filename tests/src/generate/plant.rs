//! Water circuits by chance: pumps, runs, devices, intakes, and the kinds they are of.

use serde_json::{Map, Value, json};

use super::pen::Pen;
use super::{Site, Units, pool};

const BORES: [f64; 6] = [0.021, 0.028, 0.034, 0.0428, 0.0554, 0.0678];

/// Kinds of pump and pipe.
pub(super) fn kinds(pen: &mut Pen) -> Value {
    let mut pipes = Map::new();
    for (at, bore) in BORES.iter().enumerate() {
        let bore = pen.length(*bore);
        pipes.insert(
            format!("pipe-{at}"),
            json!({ "bore": bore, "note": "inside diameter, from the catalogue" }),
        );
    }
    let pumps: Map<String, Value> =
        (0..3).map(|at| (format!("pump-{at}"), json!({ "curve": curve(pen) }))).collect();
    json!({ "pipes": pipes, "pumps": pumps })
}

fn curve(pen: &mut Pen) -> Value {
    let (flow, head) = (pen.between(3.0, 9.0, 0.5), pen.between(1.8, 5.0, 0.1));
    let us = match (pen.manner.units, pen.once_in(3)) {
        (Units::Mixed, us) => us,
        (units, _) => units == Units::Us,
    };
    // 1 m³/h in gallons (US) a minute, 231 cubic inches each, and 1 m in feet.
    let (q, h) = if us { (1e6 / (231.0 * 16.387_064 * 60.0), 1.0 / 0.3048) } else { (1.0, 1.0) };
    let shares = [(0.0, 1.0), (0.25, 0.93), (0.5, 0.76), (0.75, 0.48), (1.0, 0.1)];
    let points: Vec<[f64; 2]> = shares.iter().map(|(x, y)| [flow * x * q, head * y * h]).collect();
    let (flow, head) = if us { ("gal(US)/min", "ft") } else { ("m3/h", "m") };
    json!({ "flow": flow, "head": head, "points": points })
}

/// One circuit a room; now and then one that joins two pools.
pub(super) fn circuits(pen: &mut Pen, site: Site) -> Value {
    (0..site.rooms).map(|room| circuit(pen, site, room)).collect()
}

fn circuit(pen: &mut Pen, site: Site, room: usize) -> Value {
    let id = format!("loop-{room}");
    let mut serves = vec![format!("pool-{room}")];
    if room > 0 && pen.once_in(5) {
        serves.push(format!("pool-{}", room - 1));
    }
    let lift = pen.some_length(0.1, 0.6, 0.05);
    let pump = if site.kinds && pen.once_in(2) {
        json!({ "kind": format!("pump-{}", pen.below(3)) })
    } else {
        json!({ "curve": curve(pen) })
    };
    let runs: Vec<Value> = (0..1 + pen.below(3)).map(|at| run(pen, site, &id, at)).collect();
    let mut circuit = json!({ "id": id, "serves": serves, "static-head": lift, "pump": pump, "runs": runs });
    circuit["devices"] = if pen.once_in(10) { json!("none") } else { devices(pen, &id) };
    if !pen.once_in(6) {
        circuit["intakes"] = intakes(pen, site, room, &id);
    }
    circuit
}

fn run(pen: &mut Pen, site: Site, circuit: &str, at: usize) -> Value {
    let length = pen.some_length(2.0, 24.0, 0.5);
    let mut run = json!({ "id": format!("{circuit}-run-{at}") });
    let size = pen.below(BORES.len());
    let bore = pen.length(BORES[size]);
    if site.kinds && pen.once_in(2) {
        run["kind"] = json!(format!("pipe-{size}"));
    } else {
        run["bore"] = json!(bore);
    }
    run["length"] = json!(length);
    if pen.once_in(2) {
        let (bends, valves) = (1 + pen.below(6), pen.below(3));
        run["fittings"] = json!({ "elbow-90": bends, "ball-valve": valves, "entrance": 1, "exit": 1, "tee-branch": pen.below(2) });
    } else {
        run["loss-coefficients"] = json!(pen.between(1.0, 12.0, 0.5));
    }
    if pen.once_in(5) {
        run["ribbed"] = json!(pen.between(1.1, 2.0, 0.1));
    }
    if pen.once_in(5) {
        run["roughness"] =
            json!(if pen.manner.units == Units::Us { "0.0000984251968503937 ft" } else { "0.03 mm" });
    }
    run
}

fn devices(pen: &mut Pen, circuit: &str) -> Value {
    (0..1 + pen.below(3))
        .map(|at| {
            let (flow, clean, more) =
                (pen.between(2.0, 5.0, 0.5), pen.between(0.05, 0.3, 0.01), pen.between(0.1, 0.6, 0.05));
            let (flow, clean, dirty) = (pen.flow(flow), json!(pen.length(clean)), pen.length(clean + more));
            json!({ "id": format!("{circuit}-device-{at}"), "at-flow": flow, "clean-loss": pen.stood(clean), "dirty-loss": dirty })
        })
        .collect()
}

fn intakes(pen: &mut Pen, site: Site, room: usize, circuit: &str) -> Value {
    let frame = pool::frame(site, room);
    let count = 1 + pen.below(2);
    (0..count)
        .map(|at| {
            let [x, y] = frame.at(0.4 + 0.2 * at as f64, 0.5);
            let (area, gap, head) =
                (pen.between(0.01, 0.09, 0.005), pen.between(0.003, 0.02, 0.001), pen.between(0.5, 4.0, 0.1));
            let (area, gap, head) = (pen.area(area), pen.length(gap), pen.length(head));
            let mut intake = json!({
                "id": format!("{circuit}-intake-{at}"), "pool": format!("pool-{room}"), "at": pen.place(x, y),
                "level": pen.hung("below", &format!("pool-{room}.water"), 0.15),
                "net-area": area, "aperture": gap, "head-available": head,
            });
            intake["partner"] = match count {
                1 => json!("none"),
                _ => json!(format!("{circuit}-intake-{}", 1 - at)),
            };
            intake
        })
        .collect()
}
