//! What stands around the pools by chance: the project, the hall, the animals, and everything beside the water.

use serde_json::{Map, Value, json};

use super::pen::Pen;
use super::shapes::{self, Frame};
use super::{Site, pool};

/// Latin names and keys of the register, and one that no register knows.
const SPECIES: [&str; 6] = [
    "Emys orbicularis",
    "mauremys-reevesii",
    "Trachemys scripta",
    "Cuora amboinensis",
    "chelodina-longicollis",
    "Testudo incognita",
];

pub(super) fn project(pen: &mut Pen, seed: u64) -> Value {
    let stage = *pen.pick(&["concept", "detailed", "as-built"]);
    let welfare =
        [json!(["eu-2010-63"]), json!(["eu-2010-63", "de-1997"]), json!("none"), json!(["house-scheme-7"])];
    let mut project = json!({
        "title": format!("Water room {seed}"), "revision": "A", "date": "2026-11-20", "stage": stage,
    });
    if !pen.once_in(6) {
        project["held-to"] = json!({ "welfare": pen.pick(&welfare) });
    }
    project
}

pub(super) fn drawing(pen: &Pen) -> Value {
    json!({ "unit": pen.unit_word(), "origin": "south-west corner, inside face", "datum": "finished floor" })
}

pub(super) fn hall(pen: &mut Pen, site: Site) -> Value {
    let [wide, deep] = site.extent();
    // One row of half the depth for visitors before the rooms.
    let all = Frame { corner: [-0.5, -4.0], size: [wide + 1.0, deep + 4.5] };
    let gallery = Frame { corner: [0.0, -4.0], size: [wide, 3.8] };
    let mut spaces = vec![space(pen, "gallery", "public", gallery)];
    for room in 0..site.rooms {
        let frame = Frame { corner: site.corner(room), size: [Site::WIDE - 0.2, Site::DEEP - 0.2] };
        spaces.push(space(pen, &format!("room-{room}"), "animals", frame));
    }
    json!({ "outline": shapes::rect(pen, all, 0.0), "clear-height": pen.length(3.6), "spaces": spaces })
}

fn space(pen: &mut Pen, id: &str, whom: &str, frame: Frame) -> Value {
    let outline = if pen.once_in(2) {
        shapes::rect(pen, frame, 0.0)
    } else {
        pen.places(&[frame.corner, frame.at(1.0, 0.0), frame.at(1.0, 1.0), frame.at(0.0, 1.0)])
    };
    json!({ "id": id, "for": whom, "outline": outline, "floor-level": pen.level(0.0) })
}

pub(super) fn animals(pen: &mut Pen, site: Site) -> Value {
    (0..site.rooms).map(|room| group(pen, room)).collect()
}

fn group(pen: &mut Pen, room: usize) -> Value {
    let (small, grown) = (pen.between(0.04, 0.12, 0.01), pen.between(0.14, 0.28, 0.01));
    let now = 0.5 * (small + grown);
    let mass = pen.between(0.4, 2.4, 0.1);
    let mut group = json!({
        "id": format!("group-{room}"), "species": *pen.pick(&SPECIES),
        "sexes": format!("{}.{}.{}", pen.below(3), pen.below(6), pen.below(2)),
        "spaces": [format!("room-{room}")],
        "body-length": { "smallest": pen.length(small), "now": pen.length(now), "grown": pen.length(grown) },
        "body-height": { "smallest": pen.length(0.45 * small), "grown": pen.length(0.42 * grown) },
        "mass": pen.mass(mass),
        "eggs-removed": pen.once_in(2),
    });
    if pen.once_in(2) {
        group["body-breadth"] = json!({ "grown": pen.length(0.8 * grown) });
    }
    if pen.once_in(12) {
        group["sexes"] = json!("to be decided");
    }
    if pen.once_in(12) {
        group["spaces"] = json!("none");
    }
    group
}

/// Everything beside the water, by the members of the top level.
pub(super) fn around(pen: &mut Pen, site: Site) -> Map<String, Value> {
    let rooms = 0..site.rooms;
    let mut members = Map::new();
    let mut put = |key: &str, value: Value| members.insert(key.to_owned(), value);
    put("basking", rooms.clone().map(|room| basking(pen, site, room)).collect());
    put(
        "features",
        if pen.once_in(8) { json!("none") } else { rooms.clone().map(|r| feature(pen, site, r)).collect() },
    );
    put("barriers", rooms.clone().map(|room| barrier(pen, site, room)).collect());
    put("doors", rooms.clone().map(|room| door(pen, room)).collect());
    put("panels", rooms.clone().filter(|r| r % 2 == 0).map(|room| panel(pen, site, room)).collect());
    put("electrical", electrical(pen, site));
    put("visitors", visitors(pen, site));
    put("variances", variances(pen, site));
    members
}

fn land(site: Site, room: usize) -> Frame {
    let [x, y] = site.corner(room);
    Frame { corner: [x + 1.0, y + 6.0], size: [2.4, 1.2] }
}

fn basking(pen: &mut Pen, site: Site, room: usize) -> Value {
    let water = format!("pool-{room}.water");
    let (warm, index) = (pen.between(32.0, 44.0, 1.0), pen.between(1.0, 5.0, 0.1));
    let warm = json!(pen.warmth(warm));
    let mut site = json!({
        "id": format!("bask-{room}"), "space": format!("room-{room}"), "pool": format!("pool-{room}"),
        "outline": shapes::some(pen, land(site, room)),
        "level": pen.hung("above", &water, 0.12), "access-foot": pen.hung("below", &water, 0.1),
        "material": *pen.pick(&["wood", "cork", "rock", "concrete", "brick", "sand"]),
        "access-slope": *pen.pick(&["1 in 2", "1 in 3", "25 deg", "40 %"]),
        "surface-temperature": pen.stood(warm), "uv-index": index,
    });
    if pen.once_in(3) {
        site["groups"] = json!([format!("group-{room}")]);
    }
    if pen.once_in(4) {
        site["float"] =
            json!({ "own-mass": pen.mass(6.5), "carries": pen.mass(12.0), "freeboard": pen.length(0.06) });
    }
    site
}

fn feature(pen: &mut Pen, site: Site, room: usize) -> Value {
    let [x, y] = site.corner(room);
    let frame = Frame { corner: [x + 6.5, y + 6.2], size: [0.8, 0.6] };
    let top = pen.between(0.2, 1.2, 0.05);
    json!({
        "id": format!("feature-{room}"), "space": format!("room-{room}"), "outline": shapes::some(pen, frame),
        "top": pen.level(top), "kind": *pen.pick(&["rock", "root", "branch", "log", "plant", "ledge"]),
    })
}

fn barrier(pen: &mut Pen, site: Site, room: usize) -> Value {
    let frame = Frame { corner: site.corner(room), size: [Site::WIDE - 0.2, Site::DEEP - 0.2] };
    let line = [frame.corner, frame.at(1.0, 0.0), frame.at(1.0, 1.0), frame.at(0.0, 1.0)];
    let (top, over, joint) =
        (pen.between(0.5, 1.4, 0.05), pen.between(0.0, 0.2, 0.01), pen.between(0.002, 0.02, 0.001));
    json!({
        "id": format!("wall-{room}"), "spaces": [format!("room-{room}")], "line": pen.places(&line),
        "top": pen.level(top), "kind": *pen.pick(&["masonry", "glass", "boards", "mesh", "rockwork"]),
        "surface": *pen.pick(&["smooth", "rough", "mesh"]), "smooth-from": pen.level(0.2),
        "overhang": pen.length(over), "aperture": pen.some_length(0.005, 0.03, 0.001), "joints": pen.length(joint),
        "below-ground": pen.some_length(0.1, 0.5, 0.05), "closure": *pen.pick(&["open", "lid"]),
    })
}

fn door(pen: &mut Pen, room: usize) -> Value {
    json!({
        "id": format!("door-{room}"), "barrier": format!("wall-{room}"), "spaces": [format!("room-{room}")],
        "sill": pen.level(0.25), "gap-under": pen.some_length(0.002, 0.02, 0.001),
        "lobby": pen.once_in(2), "self-closing": pen.once_in(2),
    })
}

fn panel(pen: &mut Pen, site: Site, room: usize) -> Value {
    let frame = pool::frame(site, room);
    json!({
        "id": format!("panel-{room}"), "pool": format!("pool-{room}"),
        "line": pen.places(&[frame.at(0.2, 0.0), frame.at(0.8, 0.0)]),
        "sill": pen.hung("below", &format!("pool-{room}.water"), 0.4),
        "head": pen.hung("above", &format!("pool-{room}.water"), 0.3),
    })
}

fn electrical(pen: &mut Pen, site: Site) -> Value {
    let classes = ["swimming pool", "fountain basin, entered", "other water", "to be decided"];
    let items: Vec<Value> = (0..site.rooms).map(|room| item(pen, site, room)).collect();
    let [x, y] = site.corner(0);
    let partition = json!({
        "id": "partition", "line": pen.places(&[[x + 0.6, y + 0.6], [x + 0.6, y + 5.0]]), "top": pen.level(2.2),
        "solid": true,
    });
    json!({
        "classed": *pen.pick(&classes), "classed-by": "the planner of the electrical works", "items": items,
        "partitions": [partition],
    })
}

fn item(pen: &mut Pen, site: Site, room: usize) -> Value {
    let [x, y] = site.corner(room);
    let (along, high) = (pen.between(1.0, 8.0, 0.1), pen.between(0.8, 2.8, 0.1));
    let mut item = json!({
        "id": format!("item-{room}"), "kind": *pen.pick(&["socket", "luminaire", "lamp", "heater", "pump", "transformer"]),
        "at": pen.place_at(x + along, y + 7.0, high), "extent": pen.some_length(0.05, 0.3, 0.05),
        "supply": *pen.pick(&["mains", "SELV, AC", "SELV, DC", "separated"]), "voltage": "230 V",
        "residual-current": "30 mA", "ingress": *pen.pick(&["IPX0", "IPX4", "IPX5", "IPX8", "IPX5/IPX7"]),
        "bonded": pen.once_in(2), "submersed": false, "space": format!("room-{room}"),
    });
    if pen.once_in(3) {
        item["cord"] = json!(pen.some_length(1.0, 3.0, 0.5));
    }
    if pen.once_in(6) {
        item["residual-current"] = json!("none");
    }
    item
}

fn visitors(pen: &mut Pen, site: Site) -> Value {
    let positions: Vec<Value> = (0..site.rooms)
        .map(|room| {
            let along = site.corner(room)[0] + 2.0;
            let eye = pen.some_length(0.9, 1.7, 0.05);
            json!({
                "id": format!("view-{room}"), "at": pen.place(along, -1.0), "eye": eye, "space": "gallery",
                "pools": [format!("pool-{room}")],
            })
        })
        .collect();
    let guard = json!({
        "id": "rail", "line": pen.places(&[[0.5, -0.4], [site.extent()[0] - 0.5, -0.4]]), "top": pen.level(1.1),
        "standing": pen.level(0.0), "below": pen.level(-0.2), "opening": pen.some_length(0.08, 0.12, 0.01),
        "climbable": pen.once_in(3),
    });
    json!({ "positions": positions, "guards": [guard] })
}

fn variances(pen: &mut Pen, site: Site) -> Value {
    let rules = ["turnover-by-delivered-flow", "velocity-in-the-pipes", "levels-ascend"];
    (0..pen.below(3))
        .map(|at| {
            let room = pen.below(site.rooms);
            json!({
                "id": format!("variance-{at}"), "rule": *pen.pick(&rules), "subject": format!("circuit:loop-{room}"),
                "reason": "accepted until the next shutdown", "accepted-by": "head of life support",
                "until": *pen.pick(&["2026-06-30", "2027-03-31"]),
            })
        })
        .collect()
}
