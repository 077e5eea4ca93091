//! Reading never panics, and what it accepts serde_json accepts too, with the same strings and numbers.

#![no_main]

use haulout_document::{Kind, Limits, Node, Tree, read};
use libfuzzer_sys::fuzz_target;
use serde_json::Value;

fuzz_target!(|bytes: &[u8]| {
    if let Ok(tree) = read(bytes, &Limits::default()).accepted() {
        let value: Value = serde_json::from_slice(bytes).expect("what is accepted here is JSON");
        same(&tree, tree.root(), &value);
    }
});

fn same(tree: &Tree, node: Node, value: &Value) {
    match value {
        Value::Null => assert_eq!(tree.kind(node), Kind::Null),
        Value::Bool(yes) => assert_eq!(tree.kind(node), if *yes { Kind::True } else { Kind::False }),
        Value::Number(number) => {
            let (ours, theirs) = (tree.number(node).expect("a number"), number.as_f64().expect("a float"));
            // serde_json rounds some numbers by one unit in the last place without its slower feature.
            assert!((ours - theirs).abs() <= 1e-15 * ours.abs().max(f64::MIN_POSITIVE / 1e-15));
        }
        Value::String(text) => assert_eq!(tree.string(node).as_deref(), Some(text.as_str())),
        Value::Array(items) => {
            assert_eq!(tree.len(node), items.len());
            tree.children(node).zip(items).for_each(|(child, item)| same(tree, child, item));
        }
        Value::Object(members) => {
            assert_eq!(tree.len(node), members.len());
            for (key, member) in members {
                same(tree, tree.member(node, key).expect("a key of the same object"), member);
            }
        }
    }
}
