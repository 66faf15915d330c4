//! The live room over real sockets.
