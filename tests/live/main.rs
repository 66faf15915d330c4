//! The live room over real sockets.

mod course;
mod evidence;
mod joining;
mod limits;
mod page;
mod restart;
mod scene;
mod seats;
mod trouble;
