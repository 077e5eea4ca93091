//! The published schema and the reading code held to each other, both ways, and the schema tried on small documents.

mod schema {
    mod documents;
    mod places;
    mod quick;
    mod two_way;
}
