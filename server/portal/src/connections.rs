//! How many connections are open at once, and what each may do before it has asked for anything.

use std::io;
use std::net::SocketAddr;
use std::pin::Pin;
use std::sync::Arc;
use std::task::{Context, Poll, ready};

use axum::Router;
use axum_server::accept::Accept;
use hyper_util::rt::{TokioExecutor, TokioTimer};
use hyper_util::server::conn::auto::Builder;
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::net::TcpStream;
use tokio::sync::{OwnedSemaphorePermit, Semaphore};

use crate::store::patience::HEAD;

/// Open at once, live sockets among them: a practice of twenty clinicians has some two hundred. More are closed as they
/// come, so that the files that the process may open are never used up by who only connects.
pub const MOST: usize = 1_000;

/// Serves until `handle` is told to stop.
///
/// HTTP/1.1 only: proxies speak it to what is behind them, and browsers need it for sockets. The builder's `http1_only` holds
/// where nothing is upgraded; our sockets are, so that [`Counted`] refuses what begins as HTTP/2.
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
    let few = Few(Arc::new(Semaphore::new(most)));
    let mut server = axum_server::from_tcp(listener)?.acceptor(few).handle(handle).first_request_timeout(HEAD);
    *server.http_builder() = Builder::new(TokioExecutor::new());
    // The head of the first request, and of each after an answer.
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
            Ok((Counted { stream, as_http_2: Some(0), _place: place }, service))
        };
        std::future::ready(counted())
    }
}

/// A connection that has a place, and keeps it when it becomes a live socket.
struct Counted {
    stream: TcpStream,
    /// How many bytes came that are how HTTP/2 begins; `None` once they are not.
    as_http_2: Option<usize>,
    _place: OwnedSemaphorePermit,
}

/// How HTTP/2 begins without having been agreed on (RFC 9113, section 3.4). No method of HTTP/1.1 does.
const HTTP_2: &[u8] = b"PRI";

fn more_of_http_2(so_far: usize, bytes: &[u8]) -> Option<usize> {
    let rest = &HTTP_2[so_far..];
    let more = bytes.len().min(rest.len());
    (bytes[..more] == rest[..more]).then_some(so_far + more)
}

impl AsyncRead for Counted {
    fn poll_read(mut self: Pin<&mut Self>, cx: &mut Context<'_>, buffer: &mut ReadBuf<'_>) -> Poll<io::Result<()>> {
        let before = buffer.filled().len();
        ready!(Pin::new(&mut self.stream).poll_read(cx, buffer))?;
        if let Some(so_far) = self.as_http_2 {
            self.as_http_2 = more_of_http_2(so_far, &buffer.filled()[before..]);
            if self.as_http_2 == Some(HTTP_2.len()) {
                return Poll::Ready(Err(io::Error::new(io::ErrorKind::InvalidData, "HTTP/2 is not spoken here")));
            }
        }
        Poll::Ready(Ok(()))
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

    #[test]
    fn http_2_is_known_however_its_bytes_come() {
        assert_eq!(more_of_http_2(0, b"PRI * HTTP/2.0"), Some(3));
        assert_eq!(more_of_http_2(0, b"P"), Some(1));
        assert_eq!(more_of_http_2(1, b"RI"), Some(3));
        assert_eq!(more_of_http_2(0, b"POST"), None);
        assert_eq!(more_of_http_2(1, b"UT"), None);
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
