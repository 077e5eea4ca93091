//! Separation from water against worked cases: borders of zones by both families, and the cleaners' socket at a front.

use std::collections::BTreeMap;

use haulout_tests::{Said, examples, load, ruleset, said};

/// A pool of 4 m by 2 m let into the floor, rim at +0.00, one item.
fn answers(authority: &str, item: &str) -> BTreeMap<String, Said> {
    let text = format!(
        r#"{{ "edition": 0,
        "project": {{ "title": "Borders", "stage": "detailed", "held-to": {{ "electrical": ["{authority}"] }} }},
        "pools": [{{ "id": "main", "outline": [[0, 0], [4, 0], [4, 2], [0, 2]],
            "levels": {{ "water": "-0.10 m", "overflow": "-0.05 m", "rim": "+0.00 m" }} }}],
        "electrical": {{ "classed": "swimming pool", "classed-by": "R. Ohm", "partitions": "none",
            "items": [{{ "id": "it", "extent": "none", "cord": "none", "supply": "mains", "voltage": "120 V",
                "ingress": "IPX8", "bonded": true, {item} }}] }} }}"#
    );
    said(&load(&text).expect("the text is sound"), &ruleset(), &[])
}

fn outcome(answers: &BTreeMap<String, Said>, rule: &str) -> &'static str {
    let start = format!("{rule} item:it");
    let found = answers.iter().find(|(key, _)| key.starts_with(&start));
    found.map_or("no answer", |(_, said)| said.outcome)
}

fn socket(authority: &str, y: f64, z: f64) -> BTreeMap<String, Said> {
    let item = format!(
        r#""kind": "socket", "at": [1.0, {y}, {z}], "residual-current": "30 mA", "submersed": false"#
    );
    answers(authority, &item)
}

/// IEC 60364-7-702 as reported: zone 1 to 2.0 m, zone 2 to 3.5 m, both 2.5 m high. At 2.4 m over the floor, 1.99 m
/// from the rim is zone 1, 2.01 m zone 2, 3.51 m outside; 1.0 m from the rim but 2.6 m high is outside too.
#[test]
fn the_borders_of_zones_are_where_the_standard_has_them() {
    let (zone_one, zone_two) = (socket("iec-702", 3.99, 2.4), socket("iec-702", 4.01, 2.4));
    let (outside, above) = (socket("iec-702", 5.51, 2.4), socket("iec-702", 3.0, 2.6));
    let mains = |answers| outcome(answers, "mains-outside-zone-one");
    let asked = |answers| outcome(answers, "residual-current-protection");
    assert_eq!((mains(&zone_one), asked(&zone_one)), ("short", "met"));
    assert_eq!((mains(&zone_two), asked(&zone_two)), ("met", "met"));
    assert_eq!((mains(&outside), asked(&outside)), ("met", "does-not-apply"));
    assert_eq!((mains(&above), asked(&above)), ("met", "does-not-apply"));
}

/// A socket 1.9 m from the rim: zone 1 of the IEC family, beyond the 6 ft (1.829 m) of the NEC. At 2.6 m: zone 2, good with
/// 30 mA; under the NEC within 20 ft (6.096 m), so 30 mA are not enough.
#[test]
fn two_families_part_company_over_one_socket() {
    let (iec, nec) = (socket("iec-702", 3.9, 0.3), socket("nec-680", 3.9, 0.3));
    assert_eq!(outcome(&iec, "sockets-and-switches-outside-zone-one"), "short");
    assert_eq!(outcome(&nec, "receptacle-six-feet-from-water"), "met");
    let (iec, nec) = (socket("iec-702", 4.6, 0.3), socket("nec-680", 4.6, 0.3));
    assert_eq!(outcome(&iec, "sockets-and-switches-outside-zone-one"), "met");
    assert_eq!(outcome(&iec, "residual-current-protection"), "met");
    assert_eq!(outcome(&nec, "residual-current-protection"), "short");
}

/// A lens 0.40 m under the water is too shallow for 0.5 m and for 18 in (0.4572 m); at 0.46 m the NEC has enough.
#[test]
fn two_families_part_company_over_one_lens() {
    let lens = |authority, z: f64| {
        let item = format!(
            r#""kind": "luminaire", "at": [1.0, 1.0, {z}], "residual-current": "6 mA", "submersed": true"#
        );
        outcome(&answers(authority, &item), "underwater-luminaire-deep-enough")
    };
    assert_eq!((lens("iec-702", -0.5), lens("nec-680", -0.5)), ("short", "short"));
    assert_eq!((lens("iec-702", -0.56), lens("nec-680", -0.56)), ("short", "met"));
}

/// The Reedwater front, 0.20 m thick, top +1.50 over a rim at +0.95. On its dry face, (4.4, 2.58, +0.30), the path is
/// 0.55 up, 0.20 across and sqrt(0.02^2 + 1.20^2) down: 1.950 m, short of 2.0. At the south wall of the gallery it is
/// 0.55 + 0.20 + sqrt(2.55^2 + 1.20^2) = 3.568 m.
#[test]
fn a_socket_on_the_dry_face_of_a_low_front_is_too_near() {
    let text =
        examples().into_iter().find(|(name, _)| name == "reedwater-sound.json").expect("it is there").1;
    let path = |text: &str| {
        let loaded = load(text).expect("the text is sound");
        let all = said(&loaded, &ruleset(), &[]);
        let key = "sockets-and-switches-outside-zone-one item:cleaners-socket+pool:main";
        let found = all.iter().find(|(k, _)| k.starts_with(key)).expect("the socket is asked about");
        (found.1.outcome, found.1.numbers.first().copied().unwrap_or(f64::NAN))
    };
    let (outcome, far) = path(&text);
    assert_eq!(outcome, "met");
    assert!((far - 3.568_244).abs() < 1e-5, "{far}");
    let moved = text.replace(r#""at": [4.4, 0.05, 0.3]"#, r#""at": [4.4, 2.58, 0.3]"#);
    let (outcome, near) = path(&moved);
    assert_eq!(outcome, "short");
    assert!((near - 1.950_167).abs() < 1e-5, "{near}");
}
