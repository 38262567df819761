//! Entry point of the page of Site.

fn main() {
    web::start_site();
}
