//! From a site and a house to loads on its members.
