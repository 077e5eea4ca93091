//! The flat tree as `jsonschema` 0.61 wants to see a tree, so that nothing is copied to validate it.

use std::borrow::Cow;

use jsonschema::JsonType;
use jsonschema::json::{Array, Json, NodeIdentity, Object, cmp};
use serde_json::{Number, Value};

use crate::tree::{Kind, Node, Tree};
use crate::walk::Children;

/// The flat tree as a representation of JSON.
pub(super) struct Flat;

/// A value of a tree, or a key that is looked at as if it were one (for `propertyNames`).
#[derive(Clone, Copy)]
pub(super) enum Handle<'t> {
    Value(&'t Tree, Node),
    Name(&'t str),
}

/// An object or array of a tree.
pub(super) struct Whole<'t>(&'t Tree, Node);

pub(super) struct Members<'t>(&'t Tree, Children<'t>);

impl<'t> Handle<'t> {
    pub(super) fn value(tree: &'t Tree, node: Node) -> Self {
        Handle::Value(tree, node)
    }

    fn whole(self, kind: Kind) -> Option<Whole<'t>> {
        match self {
            Handle::Value(tree, node) if tree.kind(node) == kind => Some(Whole(tree, node)),
            _ => None,
        }
    }
}

impl Json for Flat {
    type Node<'a> = Handle<'a>;
    type PreparedKey = String;
    type StringBuffer = ();

    // A lookup walks the members, so one pass over them is always the cheaper way.
    const KEYS_PER_LOOKUP: usize = 16;
    const ACYCLIC: bool = true;

    fn prepare_key(key: &str) -> String {
        key.to_owned()
    }

    fn with_string_node<T>((): &mut (), string: &str, f: impl FnOnce(Handle<'_>) -> T) -> T {
        f(Handle::Name(string))
    }
}

impl<'a> jsonschema::json::Node<'a, Flat> for Handle<'a> {
    type Object = Whole<'a>;
    type Array = Whole<'a>;
    type Number = Number;

    fn as_object(&self) -> Option<Whole<'a>> {
        self.whole(Kind::Object)
    }

    fn as_array(&self) -> Option<Whole<'a>> {
        self.whole(Kind::Array)
    }

    fn as_string(&self) -> Option<Cow<'a, str>> {
        match *self {
            Handle::Value(tree, node) => tree.string(node),
            Handle::Name(name) => Some(Cow::Borrowed(name)),
        }
    }

    fn as_number(&self) -> Option<Number> {
        match *self {
            // A number outside f64 was refused by the reader; 0 keeps the accessor total until its problem is cured.
            Handle::Value(tree, node) if tree.kind(node) == Kind::Number => {
                Some(tree.whole_or_real(node).unwrap_or_else(|| 0.into()))
            }
            _ => None,
        }
    }

    fn as_boolean(&self) -> Option<bool> {
        match *self {
            Handle::Value(tree, node) => tree.boolean(node),
            Handle::Name(_) => None,
        }
    }

    fn is_null(&self) -> bool {
        self.json_type() == JsonType::Null
    }

    fn is_number(&self) -> bool {
        self.json_type() == JsonType::Number
    }

    fn json_type(&self) -> JsonType {
        let Handle::Value(tree, node) = *self else {
            return JsonType::String;
        };
        match tree.kind(node) {
            Kind::Null => JsonType::Null,
            Kind::False | Kind::True => JsonType::Boolean,
            Kind::Number => JsonType::Number,
            Kind::String => JsonType::String,
            Kind::Array => JsonType::Array,
            Kind::Object => JsonType::Object,
        }
    }

    fn equals_value(&self, expected: &Value) -> bool {
        match (self.as_string(), expected) {
            (Some(own), Value::String(other)) => own == other.as_str(),
            (Some(_), _) | (None, Value::String(_)) => false,
            _ => cmp::equal(&self.to_value(), expected),
        }
    }

    fn to_value(&self) -> Cow<'a, Value> {
        Cow::Owned(match *self {
            Handle::Value(tree, node) => tree.to_value(node),
            Handle::Name(name) => Value::String(name.to_owned()),
        })
    }

    // A name is told from every value by a number no value has.
    fn identity(&self) -> Option<NodeIdentity> {
        Some(match *self {
            Handle::Value(tree, node) => NodeIdentity::tagged(std::ptr::from_ref(tree) as usize, node.0),
            Handle::Name(name) => NodeIdentity::tagged(name.as_ptr() as usize, u32::MAX),
        })
    }
}

impl<'a> Object<'a, Flat> for Whole<'a> {
    type Node = Handle<'a>;
    type MemberName = Cow<'a, str>;
    type MembersIter = Members<'a>;

    fn len(&self) -> usize {
        self.0.len(self.1)
    }

    fn get(&self, key: &String) -> Option<Handle<'a>> {
        self.0.member(self.1, key).map(|node| Handle::Value(self.0, node))
    }

    fn members(&self) -> Members<'a> {
        Members(self.0, self.0.children(self.1))
    }
}

impl<'a> Iterator for Members<'a> {
    type Item = (Cow<'a, str>, Handle<'a>);

    fn next(&mut self) -> Option<Self::Item> {
        let node = self.1.next()?;
        Some((self.0.key(node).unwrap_or_default(), Handle::Value(self.0, node)))
    }
}

/// The elements of an array.
pub(super) struct Elements<'t>(&'t Tree, Children<'t>);

impl<'a> Iterator for Elements<'a> {
    type Item = Handle<'a>;

    fn next(&mut self) -> Option<Handle<'a>> {
        self.1.next().map(|node| Handle::Value(self.0, node))
    }
}

impl<'a> Array<'a, Flat> for Whole<'a> {
    type Node = Handle<'a>;
    type ElementsIter = Elements<'a>;

    fn len(&self) -> usize {
        self.0.len(self.1)
    }

    fn elements(&self) -> Elements<'a> {
        Elements(self.0, self.0.children(self.1))
    }
}
