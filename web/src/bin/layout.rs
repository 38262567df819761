//! Entry point of the page of Layout.

fn main() {
    web::start_layout();
}
