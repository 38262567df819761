//! Entry point of the page of Inspection.

fn main() {
    web::start_inspection();
}
