//! Members that bend, lean or bear.
