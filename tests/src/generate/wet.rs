//! What goes with the water by chance: exits and overflows, returns, streams, filters, heaters, feed, start-up.

use serde_json::{Map, Value, json};

use super::pen::Pen;
use super::shapes::{self, Frame};
use super::{Site, pool};

/// Adds a share of the wet parts to a design that is otherwise finished, so that its other parts stay what they were.
pub(super) fn wet(pen: &mut Pen, site: Site, members: &mut Map<String, Value>) {
    let (mut streams, mut filters, mut heaters) = (Vec::new(), Vec::new(), Vec::new());
    for room in 0..site.rooms {
        if pen.once_in(2) {
            pool_parts(pen, site, room, &mut members["pools"][room]);
        }
        if pen.once_in(2) {
            let returns = returns(pen, site, room);
            members["circuits"][room]["returns"] = returns;
        }
        if pen.once_in(2) {
            members["animals"][room]["feeds"] = feeds(pen, room);
        }
        if pen.once_in(3) {
            filters.push(filter(pen, site, room));
        }
        if room > 0 && pen.once_in(3) {
            streams.push(stream(pen, site, room));
        }
        if pen.once_in(4) {
            heaters.push(heater(pen, room));
        }
    }
    for (key, list) in [("streams", streams), ("filters", filters), ("heaters", heaters)] {
        if !list.is_empty() {
            members.insert(key.to_owned(), Value::Array(list));
        } else if pen.once_in(2) {
            members.insert(key.to_owned(), json!("none"));
        }
    }
    if pen.once_in(3) {
        members.insert("keepers".to_owned(), json!({ "unattended": "14 h", "response": "90 min" }));
    }
    if pen.once_in(3) {
        members.insert("start-up".to_owned(), start_up(pen, site));
    }
}

fn pool_parts(pen: &mut Pen, site: Site, room: usize, pool: &mut Value) {
    let (id, frame) = (format!("pool-{room}"), pool::frame(site, room));
    let ([x, y], water) = (frame.at(0.9, 0.5), format!("pool-{room}.water"));
    let width = pen.some_length(0.2, 0.8, 0.05);
    pool["exits"] = if pen.once_in(6) {
        json!("none")
    } else {
        json!([{
            "id": format!("{id}-exit"), "at": pen.place(x, y), "slope": *pen.pick(&["1 in 4", "20 deg", "1 in 2"]),
            "width": width, "foot": pen.hung("below", &water, 0.1), "top": pen.hung("above", &water, 0.1),
            "grip": *pen.pick(&["rough", "cleated", "smooth"]),
        }])
    };
    let [x, y] = frame.at(0.1, 0.5);
    let (bore, count) = (pen.some_length(0.04, 0.1, 0.005), 1 + pen.below(3));
    pool["overflows"] = json!([{
        "id": format!("{id}-overflow"), "kind": "pipe", "at": pen.place(x, y), "count": count, "bore": bore,
    }]);
    if pen.once_in(2) {
        let flow = pen.between(0.2, 1.2, 0.1);
        pool["fill"] =
            json!({ "flow": pen.flow(flow), "metered": pen.once_in(2), "air-gap": pen.length(0.05) });
    }
    if pen.once_in(2) {
        pool["water"]["ph"] = json!(pen.between(6.8, 8.2, 0.1));
    }
}

fn returns(pen: &mut Pen, site: Site, room: usize) -> Value {
    let [x, y] = pool::frame(site, room).at(0.2, 0.3);
    let under = pen.once_in(2);
    let (way, ends) = if under { ("below", "under the water") } else { ("above", "over the water") };
    let bore = pen.some_length(0.025, 0.065, 0.005);
    json!([{
        "id": format!("loop-{room}-return"), "into": format!("pool-{room}"), "at": pen.place(x, y), "ends": ends,
        "level": pen.hung(way, &format!("pool-{room}.water"), 0.1), "bore": bore,
    }])
}

fn feeds(pen: &mut Pen, room: usize) -> Value {
    let (kind, protein) =
        *pen.pick(&[("dry pellet", "38 %"), ("whole fish", "17 %"), ("greens", "3 %"), ("gel", "12 %")]);
    let (grams, peak) = (pen.between(10.0, 120.0, 5.0), pen.between(1.0, 2.0, 0.1));
    json!([{
        "id": format!("feed-{room}"), "kind": kind, "mass": pen.feed(grams), "protein": protein, "peak": peak,
    }])
}

fn filter(pen: &mut Pen, site: Site, room: usize) -> Value {
    let [x, y] = site.corner(room);
    let frame = Frame { corner: [x + 0.2, y + 0.2], size: [1.2, 0.8] };
    let (bed, wide) = (pen.between(0.3, 0.6, 0.05), pen.some_length(0.3, 1.0, 0.05));
    let id = format!("filter-{room}");
    json!({
        "id": id, "space": format!("room-{room}"), "circuit": format!("loop-{room}"), "kind": "planted gravel",
        "outline": shapes::rectangle(pen, frame),
        "levels": { "floor": pen.level(0.1), "water": pen.level(0.5 + bed), "wall-top": pen.hung("above", &format!("{id}.water"), 0.12) },
        "plenum": { "depth": pen.length(0.3), "voids": "95 %" },
        "layers": [{ "id": format!("{id}-gravel"), "material": "gravel", "grain": "8 to 16 mm", "voids": "38 %", "thickness": pen.length(bed) }],
        "lip": { "kind": "full width", "width": wide }, "animals-excluded": pen.once_in(2),
    })
}

fn stream(pen: &mut Pen, site: Site, room: usize) -> Value {
    let (from, to) = (pool::frame(site, room).at(0.1, 0.1), pool::frame(site, room - 1).at(0.9, 0.9));
    let (wide, fall) = (pen.some_length(0.2, 0.6, 0.05), pen.some_length(0.1, 0.4, 0.05));
    json!({
        "id": format!("stream-{room}"), "kind": "stream", "circuit": format!("loop-{room}"),
        "from": format!("pool-{room}"), "to": format!("pool-{}", room - 1), "line": pen.places(&[from, to]),
        "width": wide, "fall": fall, "roughness": pen.between(0.02, 0.05, 0.005),
    })
}

fn heater(pen: &mut Pen, room: usize) -> Value {
    json!({
        "id": format!("heater-{room}"), "pool": format!("pool-{room}"), "place": "in line",
        "power": format!("{} kW", 1 + pen.below(5)), "flow-switch": pen.once_in(2),
    })
}

fn start_up(pen: &mut Pen, site: Site) -> Value {
    let step = |pen: &mut Pen, room: usize| json!({ "id": format!("step-{room}"), "group": format!("group-{room}"), "count": 1 + pen.below(4), "day": 7 * (1 + pen.below(8)) });
    let steps: Vec<Value> = (0..site.rooms).map(|room| step(pen, room)).collect();
    let volume = pen.between(0.1, 0.5, 0.05);
    json!({ "media": [{ "id": "moved", "volume": pen.volume(volume) }], "steps": steps, "target-tan": "0.5 mg/L" })
}
