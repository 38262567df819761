//! Entry point of the page of Bracing.

fn main() {
    web::start_bracing();
}
