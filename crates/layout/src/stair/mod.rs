//! Stairs: risers and treads between two floors, and the stringers that carry them.
