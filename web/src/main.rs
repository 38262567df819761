//! Entry point.

fn main() {
    web::start();
}
