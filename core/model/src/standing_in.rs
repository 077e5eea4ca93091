//! In what each value of a file stands: the innermost and the outermost thing with an id around it, found in one walk.

use haulout_document::{Kind, Node, Tree};

/// No such thing.
const NOTHING: u32 = u32::MAX;

/// What stands around one value.
#[derive(Debug, Clone, Copy)]
struct Around {
    /// Where the id of the innermost thing stands.
    inner: u32,
    /// Where the id of the outermost thing stands.
    outer: u32,
    /// The member of the top level.
    top: u32,
    /// Whether a key of the designer's own, `x-…`, lies between it and the root.
    own: bool,
}

/// What stands around every value of a tree.
pub(crate) struct Places<'t> {
    tree: &'t Tree,
    around: Vec<Around>,
    /// The string of every key `id`, in the order of the file.
    pub(crate) ids: Vec<Node>,
}

impl<'t> Places<'t> {
    pub(crate) fn of(tree: &'t Tree) -> Self {
        let nodes = 1..tree.size() as u32;
        let mut named = vec![NOTHING; tree.size()];
        let mut ids = Vec::new();
        for node in nodes.clone().filter(|n| tree.is_called(Node(*n), "id")) {
            let Some(parent) = tree.parent(Node(node)) else { continue };
            let name = &mut named[parent.0 as usize];
            if tree.kind(Node(node)) == Kind::String {
                ids.push(Node(node));
                *name = if *name == NOTHING { node } else { *name };
            }
        }
        let root = Around { inner: NOTHING, outer: NOTHING, top: 0, own: false };
        let mut around = Vec::with_capacity(tree.size());
        around.push(root);
        for node in nodes {
            let parent = tree.parent(Node(node)).unwrap_or(Node(0));
            let Around { inner, outer, top, own } = around[parent.0 as usize];
            let id = named[node as usize];
            around.push(Around {
                inner: if id == NOTHING { inner } else { id },
                outer: if outer == NOTHING { id } else { outer },
                top: if top == 0 { node } else { top },
                own: own || tree.key(Node(node)).is_some_and(|key| key.starts_with("x-")),
            });
        }
        Places { tree, around, ids }
    }

    /// The id of the innermost thing a value stands in, or the key of its member of the top level.
    pub(crate) fn innermost(&self, node: Node) -> String {
        self.name(self.at(node).inner, node)
    }

    /// The id of the outermost thing, or the key of the member of the top level.
    pub(crate) fn outermost(&self, node: Node) -> String {
        self.name(self.at(node).outer, node)
    }

    /// A number that is the same for values of the same outermost thing.
    pub(crate) fn outermost_node(&self, node: Node) -> u32 {
        let around = self.at(node);
        if around.outer == NOTHING { around.top } else { around.outer }
    }

    /// Whether a value stands under a key of the designer's own.
    pub(crate) fn is_own(&self, node: Node) -> bool {
        self.at(node).own
    }

    fn at(&self, node: Node) -> Around {
        self.around[node.0 as usize]
    }

    fn name(&self, id: u32, node: Node) -> String {
        let named = (id != NOTHING).then(|| self.tree.string(Node(id))).flatten();
        let name = named.or_else(|| self.tree.key(Node(self.at(node).top)));
        name.unwrap_or_default().into_owned()
    }
}

/// A node and what holds it, inside out, the root left out.
pub(crate) fn ancestors(tree: &Tree, node: Node) -> impl Iterator<Item = Node> + '_ {
    std::iter::successors(Some(node), |n| tree.parent(*n)).take_while(|n| *n != tree.root())
}
