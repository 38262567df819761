//! Entry point of the page of the members beside the header.

fn main() {
    web::start_member();
}
