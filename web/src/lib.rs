//! The Galeframe web app.
