//! Pools by chance: outline, level ladder, zones, what lies in them, the water.

use serde_json::{Map, Value, json};

use super::Site;
use super::pen::Pen;
use super::shapes::{self, Frame};

/// The pools of a site, one in each room.
pub(super) fn pools(pen: &mut Pen, site: Site) -> Value {
    let mut copied = None;
    (0..site.rooms).map(|room| pool(pen, site, room, &mut copied)).collect()
}

/// The box a pool is drawn in.
pub(super) fn frame(site: Site, room: usize) -> Frame {
    let [x, y] = site.corner(room);
    // Sizes follow from the room, so that what is drawn beside the pool knows them too.
    let (wide, deep) = (3.0 + (room % 5) as f64 * 0.6, 2.4 + (room % 3) as f64 * 0.7);
    Frame { corner: [x + 1.6, y + 1.2], size: [wide, deep] }
}

fn pool(pen: &mut Pen, site: Site, room: usize, copied: &mut Option<usize>) -> Value {
    let id = format!("pool-{room}");
    let water = pen.between(0.3, 1.1, 0.05);
    let mut pool = Map::new();
    pool.insert("id".to_owned(), json!(id));
    if !pen.once_in(20) {
        pool.insert("space".to_owned(), json!(format!("room-{room}")));
    }
    pool.insert("outline".to_owned(), outline(pen, site, room, copied));
    pool.insert("levels".to_owned(), levels(pen, &id, water));
    let shallow = pen.between(0.08, 0.3, 0.01);
    let depth = pen.some_length(shallow, shallow, 0.01);
    pool.insert("depth".to_owned(), json!(depth));
    if pen.once_in(2) {
        pool.insert("edge".to_owned(), edge(pen));
    }
    let zones = zones(pen, &id, site, room, shallow);
    pool.insert("solids".to_owned(), solids(pen, &id, &zones));
    if !zones.is_empty() {
        pool.insert("zones".to_owned(), Value::Array(zones));
    }
    pool.insert("water".to_owned(), water_of(pen));
    Value::Object(pool)
}

fn outline(pen: &mut Pen, site: Site, room: usize, copied: &mut Option<usize>) -> Value {
    let frame = frame(site, room);
    match (pen.below(8), *copied) {
        (0, Some(from)) if pen.once_in(2) => shapes::copy(pen, &format!("pool-{from}"), site, from, room),
        (1, _) if site.kinds => {
            let by = pen.some_length(1.2, 1.6, 0.05);
            json!({ "inset": { "of": format!("room-{room}"), "by": by } })
        }
        (2, _) => {
            *copied = Some(room);
            shapes::corners(pen, frame)
        }
        (3, _) if pen.once_in(6) => json!("to be decided"),
        _ => shapes::some(pen, frame),
    }
}

fn levels(pen: &mut Pen, id: &str, water: f64) -> Value {
    let on = format!("{id}.water");
    let mut levels = Map::new();
    let (low, over, free) =
        (pen.between(0.01, 0.05, 0.005), pen.between(0.02, 0.05, 0.005), pen.between(0.08, 0.3, 0.01));
    let hung = pen.once_in(2);
    levels.insert("low".to_owned(), pen.hung("below", &on, low));
    levels.insert("water".to_owned(), pen.level(water));
    let overflow = if hung { pen.hung("above", &on, over) } else { pen.level(water + over) };
    levels.insert("overflow".to_owned(), overflow);
    if pen.once_in(2) {
        levels.insert("liner-top".to_owned(), pen.hung("above", &format!("{id}.overflow"), 0.03));
    }
    let rim = if pen.once_in(2) { pen.hung("above", &on, free) } else { pen.level(water + free) };
    levels.insert("rim".to_owned(), rim);
    Value::Object(levels)
}

fn edge(pen: &mut Pen) -> Value {
    json!(*pen.pick(&["step", "1 in 1", "1 in 2", "45 deg", "60 deg", "200 %"]))
}

fn zones(pen: &mut Pen, pool: &str, site: Site, room: usize, shallow: f64) -> Vec<Value> {
    let frame = frame(site, room);
    let mut depth = shallow;
    (0..pen.below(4))
        .map(|at| {
            depth += pen.between(0.1, 0.35, 0.01);
            let inside = 0.12 + 0.1 * at as f64;
            let drawn = Frame { corner: frame.at(inside, inside), size: frame.size.map(|s| s * (1.0 - 2.0 * inside)) };
            let outline = if pen.once_in(2) {
                let by = pen.some_length(0.15, 0.3, 0.01);
                json!({ "inset": { "of": if at == 0 { pool.to_owned() } else { format!("{pool}-zone-{}", at - 1) }, "by": by } })
            } else {
                shapes::some(pen, drawn)
            };
            let mut zone = json!({ "id": format!("{pool}-zone-{at}"), "outline": outline, "edge": edge(pen) });
            if pen.once_in(4) {
                zone["bed"] = pen.hung("below", &format!("{pool}.water"), depth);
            } else {
                zone["depth"] = json!(pen.length(depth));
            }
            zone
        })
        .collect()
}

fn solids(pen: &mut Pen, pool: &str, zones: &[Value]) -> Value {
    if pen.once_in(8) {
        return json!("none");
    }
    let volume = pen.between(0.02, 0.3, 0.01);
    let mut solids = vec![json!({
        "id": format!("{pool}-rocks"), "kind": *pen.pick(&["rock", "timber", "other"]),
        "volume": pen.volume(volume),
    })];
    if let Some(zone) = zones.first() {
        let thickness = pen.some_length(0.02, 0.08, 0.005);
        let voids = format!("{} %", 30 + pen.below(15));
        solids.push(json!({
            "id": format!("{pool}-gravel"), "kind": "gravel", "zones": [zone["id"]],
            "thickness": thickness, "voids": voids,
        }));
    }
    if pen.once_in(3) {
        let volume = pen.between(0.1, 0.4, 0.05);
        let volume = pen.volume(volume);
        solids.push(
            json!({ "id": format!("{pool}-crates"), "kind": "void-former", "volume": volume, "voids": 0.95 }),
        );
    }
    Value::Array(solids)
}

fn water_of(pen: &mut Pen) -> Value {
    let (warm, swing, clear) =
        (pen.between(22.0, 28.0, 0.5), pen.between(0.5, 2.0, 0.5), pen.between(0.5, 3.0, 0.1));
    let temperature = json!(pen.warmth(warm));
    let clear = json!(pen.length(clear));
    let mut water = json!({ "temperature": pen.stood(temperature), "secchi": pen.stood(clear) });
    if pen.once_in(2) {
        water["swing"] = json!(pen.swing(swing));
    }
    water
}
