//! A line to a relay: over UDP, TCP, or TLS on TCP, as its address says. The protocol itself (RFC 8656) is a library's.

use std::net::{IpAddr, SocketAddr};
use std::sync::Arc;
use std::time::Duration;

use tokio::io::{AsyncRead, AsyncReadExt, AsyncWrite, AsyncWriteExt};
use tokio::net::{TcpStream, UdpSocket};
use tokio::time::{Instant, timeout, timeout_at};
use tokio_rustls::TlsConnector;
use tokio_rustls::rustls::pki_types::ServerName;
use tokio_rustls::rustls::{ClientConfig, RootCertStore};
use turn_client_proto::api::{TurnClientApi, TurnConfig, TurnEvent, TurnPollRet};
use turn_client_proto::stun::Instant as Moment;
use turn_client_proto::stun::agent::Transmit;
use turn_client_proto::tcp::TurnClientTcp;
use turn_client_proto::types::{AddressFamily, TransportType, TurnCredentials};
use turn_client_proto::udp::TurnClientUdp;

turn_client_proto::impl_client!(Client, (Udp, TurnClientUdp), (Tcp, TurnClientTcp));

/// So long is an answer waited for.
const PATIENCE: Duration = Duration::from_secs(5);

trait Stream: AsyncRead + AsyncWrite + Send + Unpin {}
impl<T: AsyncRead + AsyncWrite + Send + Unpin> Stream for T {}

enum Wire {
    Datagrams(UdpSocket),
    Bytes(Box<dyn Stream>),
}

/// Where a relay is, as its address says.
pub(super) struct Place {
    pub(super) host: String,
    pub(super) port: u16,
    /// On TCP; else over UDP.
    pub(super) stream: bool,
    /// Within TLS.
    pub(super) sealed: bool,
}

/// See the head of this file.
pub(super) struct Line {
    wire: Wire,
    client: Client,
    since: Instant,
    /// Something came from there.
    pub(super) heard: bool,
}

impl Line {
    /// Reaches the relay and asks for a place there, at an address of this family, under this name and password.
    ///
    /// # Errors
    /// A sentence: the place is not reached.
    pub(super) async fn open(place: &Place, family: AddressFamily, username: &str, password: &str) -> Result<Self, String> {
        let mut config = TurnConfig::new(TurnCredentials::new(username, password));
        config.set_address_family(family);
        let found = timeout(PATIENCE, tokio::net::lookup_host((place.host.as_str(), place.port))).await;
        let found =
            found.map_err(|_| "its name was not found in time".to_owned())?.map_err(|fault| format!("its name is not found: {fault}"))?;
        let remote = found.into_iter().next().ok_or("its name has no address")?;
        let (wire, client) = if place.stream {
            let (stream, local) = connect(place, remote).await?;
            (Wire::Bytes(stream), Client::Tcp(TurnClientTcp::allocate(local, remote, config)))
        } else {
            let any: SocketAddr = if remote.is_ipv4() { ([0, 0, 0, 0], 0).into() } else { ([0u16; 8], 0).into() };
            let socket = UdpSocket::bind(any).await.map_err(|fault| format!("no socket of our own: {fault}"))?;
            socket.connect(remote).await.map_err(|fault| format!("not reached: {fault}"))?;
            let local = socket.local_addr().map_err(|fault| fault.to_string())?;
            (Wire::Datagrams(socket), Client::Udp(TurnClientUdp::allocate(local, remote, config)))
        };
        Ok(Self { wire, client, since: Instant::now(), heard: false })
    }

    /// What the relay makes of what was asked last. `None`: nothing in time.
    pub(super) async fn answer(&mut self) -> Option<TurnEvent> {
        let until = Instant::now() + PATIENCE;
        while Instant::now() < until {
            while let Some(transmit) = self.client.poll_transmit(self.now()) {
                self.send(&transmit.data).await.ok()?;
            }
            if let Some(event) = self.client.poll_event() {
                return Some(event);
            }
            let next = match self.client.poll(self.now()) {
                TurnPollRet::WaitUntil(moment) => self.since + moment.saturating_duration_since(Moment::ZERO),
                _ => Instant::now(),
            };
            let mut heard = vec![0; 2048];
            if let Ok(length) = timeout_at(next.min(until), self.hear(&mut heard)).await {
                heard.truncate(length.ok()?);
                self.heard = true;
                let transmit = Transmit::new(heard, self.client.transport(), self.client.remote_addr(), self.client.local_addr());
                self.client.recv(transmit, self.now());
            }
        }
        None
    }

    /// Asks to be let through to this address. False: it could not even be asked.
    pub(super) fn ask_for(&mut self, address: IpAddr) -> bool {
        let now = self.now();
        self.client.create_permission(TransportType::Udp, address, now).is_ok()
    }

    fn now(&self) -> Moment {
        Moment::from_nanos(i64::try_from(self.since.elapsed().as_nanos()).unwrap_or(i64::MAX))
    }

    async fn send(&mut self, data: &[u8]) -> std::io::Result<()> {
        match &mut self.wire {
            Wire::Datagrams(socket) => socket.send(data).await.map(|_| ()),
            Wire::Bytes(stream) => stream.write_all(data).await,
        }
    }

    async fn hear(&mut self, into: &mut [u8]) -> std::io::Result<usize> {
        match &mut self.wire {
            Wire::Datagrams(socket) => socket.recv(into).await,
            Wire::Bytes(stream) => match stream.read(into).await? {
                0 => Err(std::io::ErrorKind::UnexpectedEof.into()),
                length => Ok(length),
            },
        }
    }
}

async fn connect(place: &Place, remote: SocketAddr) -> Result<(Box<dyn Stream>, SocketAddr), String> {
    let tried = timeout(PATIENCE, TcpStream::connect(remote)).await.map_err(|_| "nothing answers there".to_owned())?;
    let stream = tried.map_err(|fault| format!("not reached: {fault}"))?;
    let local = stream.local_addr().map_err(|fault| fault.to_string())?;
    if !place.sealed {
        return Ok((Box::new(stream), local));
    }
    let roots = RootCertStore { roots: webpki_roots::TLS_SERVER_ROOTS.to_vec() };
    let config = ClientConfig::builder().with_root_certificates(roots).with_no_client_auth();
    let name =
        ServerName::try_from(place.host.clone()).map_err(|_| format!("\"{}\" is no name that a certificate can have", place.host))?;
    let sealed = timeout(PATIENCE, TlsConnector::from(Arc::new(config)).connect(name, stream)).await;
    let sealed =
        sealed.map_err(|_| "its TLS does not answer".to_owned())?.map_err(|fault| format!("its certificate is not accepted: {fault}"))?;
    Ok((Box::new(sealed), local))
}
