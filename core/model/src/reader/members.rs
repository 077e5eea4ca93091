//! The members of the objects a reader stands in, laid side by side, so that a key is found without a walk.

use haulout_document::Node;

use super::tree::TreeReader;

/// The length of a key and the seven bytes it begins with: keys that differ here are not the same.
fn start_of(key: &str) -> u64 {
    let mut start = [0; 8];
    let length = key.len().min(7);
    start[..length].copy_from_slice(&key.as_bytes()[..length]);
    start[7] = key.len().min(255) as u8;
    u64::from_le_bytes(start)
}

impl TreeReader<'_> {
    pub(super) fn note_members(&mut self, object: Node) {
        let tree = self.tree;
        let start = |node: Node| (tree.key(node).map_or(0, |key| start_of(&key)), node);
        self.members.extend(tree.children(object).map(start));
    }

    /// The member of the object the reader stands on.
    pub(super) fn own_member(&self, from: usize, key: &str) -> Option<Node> {
        let start = start_of(key);
        let same =
            |(its, node): &&(u64, Node)| *its == start && (key.len() < 8 || self.tree.is_called(*node, key));
        self.members[from..].iter().find(same).map(|(_, node)| *node)
    }
}
