//! How many connections are open at once, and what each may do before it has asked for anything.

use std::io;
use std::net::SocketAddr;
use std::pin::Pin;
use std::sync::Arc;
use std::task::{Context, Poll};

use axum::Router;
use axum_server::accept::Accept;
use hyper_util::rt::{TokioExecutor, TokioTimer};
use hyper_util::server::conn::auto::Builder;
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::net::TcpStream;
use tokio::sync::{OwnedSemaphorePermit, Semaphore};
use tokio::time::{Sleep, sleep};

use crate::patience::HEAD;

/// Open at once, live sockets among them: a practice of twenty clinicians has some two hundred. More are closed as they
/// come, so that the files that the process may open are never used up by who only connects.
pub const MOST: usize = 1_000;

/// Serves until `handle` is told to stop.
///
/// HTTP/1.1 only: proxies speak it to what is behind them, and browsers need it for sockets.
///
/// # Errors
/// When the port cannot be listened on.
pub async fn serve(router: Router, listener: std::net::TcpListener, handle: axum_server::Handle<SocketAddr>) -> io::Result<()> {
    serve_few(router, listener, handle, MOST).await
}

async fn serve_few(
    router: Router,
    listener: std::net::TcpListener,
    handle: axum_server::Handle<SocketAddr>,
    most: usize,
) -> io::Result<()> {
    let mut server = axum_server::from_tcp(listener)?.acceptor(Few(Arc::new(Semaphore::new(most)))).handle(handle);
    *server.http_builder() = Builder::new(TokioExecutor::new()).http1_only();
    // From the first byte of a connection, and again after each answer.
    server.http_builder().http1().timer(TokioTimer::new()).header_read_timeout(HEAD);
    server.serve(router.into_make_service_with_connect_info::<SocketAddr>()).await
}

/// Takes connections while there are places.
#[derive(Clone)]
struct Few(Arc<Semaphore>);

impl<S> Accept<TcpStream, S> for Few {
    type Stream = Counted;
    type Service = S;
    type Future = std::future::Ready<io::Result<(Counted, S)>>;

    fn accept(&self, stream: TcpStream, service: S) -> Self::Future {
        let counted = || {
            // Stops and beats are small and must not wait to be joined with what comes after them.
            stream.set_nodelay(true)?;
            let place = Arc::clone(&self.0).try_acquire_owned().map_err(|_| io::Error::other("too many connections"))?;
            Ok((Counted { stream, silent: Some(Box::pin(sleep(HEAD))), _place: place }, service))
        };
        std::future::ready(counted())
    }
}

/// A connection that has a place, and keeps it when it becomes a live socket.
struct Counted {
    stream: TcpStream,
    /// Until the first byte: what finds out the version waits for it without an end.
    silent: Option<Pin<Box<Sleep>>>,
    _place: OwnedSemaphorePermit,
}

impl AsyncRead for Counted {
    fn poll_read(mut self: Pin<&mut Self>, cx: &mut Context<'_>, buffer: &mut ReadBuf<'_>) -> Poll<io::Result<()>> {
        let read = Pin::new(&mut self.stream).poll_read(cx, buffer);
        if read.is_ready() {
            self.silent = None;
        } else if let Some(silent) = &mut self.silent
            && silent.as_mut().poll(cx).is_ready()
        {
            return Poll::Ready(Err(io::ErrorKind::TimedOut.into()));
        }
        read
    }
}

impl AsyncWrite for Counted {
    fn poll_write(mut self: Pin<&mut Self>, cx: &mut Context<'_>, bytes: &[u8]) -> Poll<io::Result<usize>> {
        Pin::new(&mut self.stream).poll_write(cx, bytes)
    }

    fn poll_flush(mut self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_flush(cx)
    }

    fn poll_shutdown(mut self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_shutdown(cx)
    }

    fn poll_write_vectored(mut self: Pin<&mut Self>, cx: &mut Context<'_>, parts: &[io::IoSlice<'_>]) -> Poll<io::Result<usize>> {
        Pin::new(&mut self.stream).poll_write_vectored(cx, parts)
    }

    fn is_write_vectored(&self) -> bool {
        self.stream.is_write_vectored()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use tokio::io::{AsyncReadExt, AsyncWriteExt};

    /// Whether a request over a new connection is answered; false when the connection is closed.
    async fn is_answered(address: SocketAddr) -> bool {
        let asked = async {
            let mut connection = TcpStream::connect(address).await?;
            connection.write_all(b"GET / HTTP/1.1\r\nhost: localhost\r\nconnection: close\r\n\r\n").await?;
            let mut answer = String::new();
            connection.read_to_string(&mut answer).await?;
            io::Result::Ok(answer.starts_with("HTTP/1.1 200"))
        };
        asked.await.unwrap_or(false)
    }

    #[tokio::test]
    async fn one_connection_too_many_is_closed_and_a_place_comes_back() {
        let listener = std::net::TcpListener::bind("127.0.0.1:0").unwrap();
        listener.set_nonblocking(true).unwrap();
        let address = listener.local_addr().unwrap();
        let router = Router::new().route("/", axum::routing::get(|| async { "here" }));
        tokio::spawn(serve_few(router, listener, axum_server::Handle::new(), 2));
        assert!(is_answered(address).await);
        let mut held = Vec::new();
        while is_answered(address).await {
            held.push(TcpStream::connect(address).await.unwrap());
            assert!(held.len() <= 3, "there are two places");
        }
        held.clear();
        while !is_answered(address).await {}
    }
}
