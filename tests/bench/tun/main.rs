//! An emulated link between this network namespace and one of its own, for `tests/bench/support/tun.mjs`. It needs root.
//!
//! Two TUN devices, one here and one in there, and packets carried between them: each takes a while that is drawn anew, and
//! some are lost. What goes over it is the kernel's own TCP, with its timeouts, windows and repeats. In there `localhost:PORT`
//! leads over the link to `localhost:PORT` out here, so a browser that is run in there sees the portal at its true origin.
//!
//! `bench-tun PORT SEED` prints the process id by which the namespace is entered (`nsenter --net=/proc/PID/ns/net`), and takes
//! lines of `MID JITTER LOSS` (ms, ms, share), each answered with "done"; until the first, packets pass at once. The line `move` gives the
//! far end another address in place of the one it has, as when a phone changes its network. It ends with its standard input. Nothing outlives it, however it ends: the kernel takes back a TUN device that nobody holds and a
//! namespace that nobody is in. Exit code 2: no link can be made here; it says why.

mod packet;

use std::error::Error;
use std::io::{BufRead, BufReader};
use std::net::Ipv4Addr;
use std::process::{Child, Command, ExitCode, Stdio};
use std::sync::{Arc, Mutex, PoisonError, mpsc};
use std::thread;
use std::time::{Duration, Instant};

use tokio::net::{TcpListener, TcpStream};
use tun_rs::{DeviceBuilder, SyncDevice};

type Fault = Box<dyn Error + Send + Sync>;

/// The greatest packet: what an Ethernet carries, bytes.
const MTU: u16 = 1500;

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let done = match arguments.iter().map(String::as_str).collect::<Vec<_>>()[..] {
        ["inside", port, near] => inside(port, near),
        [port, seed] => outside(port, seed),
        _ => Err("usage: bench-tun PORT SEED".into()),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(fault) => {
            eprintln!("{fault}");
            ExitCode::from(2)
        }
    }
}

/// Makes the link, and carries what goes over it until standard input ends.
fn outside(port: &str, seed: &str) -> Result<(), Fault> {
    let seed: u32 = seed.parse().map_err(|_| format!("\"{seed}\" is no seed"))?;
    let process = std::process::id();
    let [near, mut far, mut other] = addresses(process);
    let [near_name, far_name] = ["near", "far"].map(|end| format!("lw{process}{end}"));

    // Its standard input is a pipe of ours: it ends when we do, and the namespace with it.
    let mut room = Command::new("unshare")
        .arg("--net")
        .arg(std::env::current_exe()?)
        .args(["inside", port, &near])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .map_err(|fault| format!("unshare (of util-linux) could not be run: {fault}"))?;
    await_inside(&mut room)?;
    let (near_end, far_end) = (device(&near_name)?, device(&far_name)?);
    let into = room.id().to_string();
    run(&["ip", "link", "set", &far_name, "netns", &into])?;
    bring_up(&["ip"], &near_name, &near, &far)?;
    let inside = ["nsenter", "--net", "--target", &into, "ip"];
    bring_up(&inside, &far_name, &far, &near)?;
    lead_out(&inside, &far_name)?;

    let weather = Arc::new(Mutex::new(Weather::default()));
    carry(&near_end, &far_end, &weather, Chance::new(seed, 1));
    carry(&far_end, &near_end, &weather, Chance::new(seed, 2));
    forward(&format!("{near}:{port}"), &format!("127.0.0.1:{port}"))?;

    println!("{into}");
    for line in std::io::stdin().lock().lines() {
        let line = line?;
        if line == "move" {
            std::mem::swap(&mut far, &mut other);
            readdress(&into, [&near_name, &far_name], &near, [&other, &far])?;
            println!("done");
            continue;
        }
        *weather.lock().unwrap_or_else(PoisonError::into_inner) = Weather::read(&line)?;
        println!("done");
    }
    Ok(())
}

/// In the namespace: carries localhost's connections on to `near`, until standard input ends.
fn inside(port: &str, near: &str) -> Result<(), Fault> {
    run(&["ip", "link", "set", "lo", "up"])?;
    forward(&format!("127.0.0.1:{port}"), &format!("{near}:{port}"))?;
    println!("inside");
    std::io::copy(&mut std::io::stdin(), &mut std::io::sink())?;
    Ok(())
}

fn await_inside(room: &mut Child) -> Result<(), Fault> {
    let mut said = String::new();
    if let Some(out) = &mut room.stdout {
        BufReader::new(out).read_line(&mut said)?;
    }
    if said.is_empty() { Err("no network namespace could be set up (the reason is above)".into()) } else { Ok(()) }
}

/// The range kept for measuring networks (RFC 2544).
const RANGE: &str = "198.18.0.0/15";

/// The near end's address and the two that the far end may have, from the lower half of the range; processes beside each other have others.
fn addresses(process: u32) -> [String; 3] {
    let first = u32::from(Ipv4Addr::new(198, 18, 0, 0)) + (process % (1 << 14)) * 4;
    [1, 2, 3].map(|end| Ipv4Addr::from(first + end).to_string())
}

fn device(name: &str) -> Result<Arc<SyncDevice>, Fault> {
    let device = DeviceBuilder::new().name(name).mtu(MTU).enable(false).build_sync();
    Ok(Arc::new(device.map_err(|fault| format!("the TUN device {name} could not be made: {fault}"))?))
}

fn bring_up(ip: &[&str], name: &str, own: &str, other: &str) -> Result<(), Fault> {
    run(&[ip, &["address", "add", own, "peer", other, "dev", name]].concat())?;
    run(&[ip, &["link", "set", name, "up"]].concat())
}

/// In there the whole range lies over the link, so that what listens out here at another of its addresses is found.
fn lead_out(ip: &[&str], name: &str) -> Result<(), Fault> {
    run(&[ip, &["route", "add", RANGE, "dev", name]].concat())
}

/// The far end has the second address from now on, and not the first.
fn readdress(into: &str, [near_name, far_name]: [&str; 2], near: &str, [old, new]: [&str; 2]) -> Result<(), Fault> {
    let inside = ["nsenter", "--net", "--target", into, "ip"];
    run(&[&inside[..], &["address", "del", old, "peer", near, "dev", far_name]].concat())?;
    run(&["ip", "address", "del", near, "peer", old, "dev", near_name])?;
    bring_up(&["ip"], near_name, near, new)?;
    bring_up(&inside, far_name, new, near)?;
    lead_out(&inside, far_name)
}

fn run(command: &[&str]) -> Result<(), Fault> {
    let status = Command::new(command[0]).args(&command[1..]).stdin(Stdio::null()).status();
    match status {
        Ok(status) if status.success() => Ok(()),
        Ok(status) => Err(format!("\"{}\" failed: {status}", command.join(" ")).into()),
        Err(fault) => Err(format!("{} could not be run: {fault}", command[0]).into()),
    }
}

/// What the link does to packets. The default: nothing.
#[derive(Clone, Copy, Default)]
struct Weather {
    /// Each packet takes `mid` ± `jitter`, drawn evenly, ms.
    mid: f64,
    jitter: f64,
    /// The share that is lost, 0 to 1.
    loss: f64,
}

impl Weather {
    fn read(line: &str) -> Result<Self, Fault> {
        let numbers: Result<Vec<f64>, _> = line.split_whitespace().map(str::parse).collect();
        match numbers.as_deref() {
            Ok(&[mid, jitter, loss]) if jitter >= 0.0 && mid >= jitter && mid.is_finite() && (0.0..=1.0).contains(&loss) => {
                Ok(Self { mid, jitter, loss })
            }
            _ => Err(format!("\"{line}\" is not MID JITTER LOSS").into()),
        }
    }
}

/// One direction. Packets of a kind keep their order: what varies in real networks is mostly how long queues are, and those keep it; TCP would
/// take data that comes late for lost. A bare acknowledgement is a kind of its own. It leaves an end a moment before data that is
/// drawn another delay; of one kind, that data would take the longer of two delays, as in no queue of so short a moment, and not `mid` ± `jitter`.
/// TCP does not mind an acknowledgement that is overtaken: they add up.
fn carry(from: &Arc<SyncDevice>, to: &Arc<SyncDevice>, weather: &Arc<Mutex<Weather>>, mut chance: Chance) {
    let mut lanes = [Lane::into(to), Lane::into(to)];
    let (from, weather) = (Arc::clone(from), Arc::clone(weather));
    thread::spawn(move || {
        let mut packet = vec![0; usize::from(MTU)];
        while let Ok(length) = from.recv(&mut packet) {
            let now = Instant::now();
            let packet = &packet[..length];
            let Weather { mid, jitter, loss } = *weather.lock().unwrap_or_else(PoisonError::into_inner);
            if chance.draw() < loss {
                continue;
            }
            let takes = mid + jitter * (2.0 * chance.draw() - 1.0);
            lanes[usize::from(packet::only_acknowledges(packet))].send(now + Duration::from_secs_f64(takes / 1000.0), packet);
        }
        die("a TUN device can be read no more");
    });
}

/// Packets that do not overtake each other.
struct Lane {
    under_way: mpsc::Sender<(Instant, Vec<u8>)>,
    due: Instant,
}

impl Lane {
    /// With a thread of its own: threads that sleep are woken within a tenth of a millisecond; timers of an event loop count in whole ones.
    fn into(to: &Arc<SyncDevice>) -> Self {
        let (sender, receiver) = mpsc::channel::<(Instant, Vec<u8>)>();
        let to = Arc::clone(to);
        thread::spawn(move || {
            for (due, packet) in receiver {
                thread::sleep(due.saturating_duration_since(Instant::now()));
                if to.send(&packet).is_err() {
                    die("a TUN device takes no more packets");
                }
            }
        });
        Self { under_way: sender, due: Instant::now() }
    }

    /// The packet arrives at `due`, or with the one before it when that is later.
    fn send(&mut self, due: Instant, packet: &[u8]) {
        self.due = self.due.max(due);
        if self.under_way.send((self.due, packet.to_vec())).is_err() {
            die("what carries packets has ended");
        }
    }
}

/// A link that carries nothing must not be measured.
fn die(why: &str) -> ! {
    eprintln!("the emulated link broke: {why}");
    std::process::exit(1)
}

/// Numbers from 0 up to 1 by xorshift64 (Marsaglia 2003).
struct Chance(u64);

impl Chance {
    /// Near seeds are spread by an odd factor. `way` above 0.
    fn new(seed: u32, way: u64) -> Self {
        Self((u64::from(seed) * 4 + way).wrapping_mul(0x9e37_79b9_7f4a_7c15))
    }

    fn draw(&mut self) -> f64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        f64::from((self.0 >> 32) as u32) / f64::from(u32::MAX)
    }
}

/// Listens at `at`, and carries every connection on to `to`, from now on.
fn forward(at: &str, to: &str) -> Result<(), Fault> {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_io().build()?;
    let listener = runtime.block_on(TcpListener::bind(at)).map_err(|fault| format!("nothing can listen at {at}: {fault}"))?;
    let to = to.to_owned();
    thread::spawn(move || {
        runtime.block_on(async {
            loop {
                match listener.accept().await {
                    Ok((near, _)) => drop(tokio::spawn(join(near, to.clone()))),
                    Err(fault) => die(&fault.to_string()),
                }
            }
        });
    });
    Ok(())
}

/// One connection. When either side fails, both are dropped, and their ends see it.
async fn join(mut near: TcpStream, to: String) -> std::io::Result<()> {
    let mut far = TcpStream::connect(to).await?;
    near.set_nodelay(true)?;
    far.set_nodelay(true)?;
    tokio::io::copy_bidirectional(&mut near, &mut far).await?;
    Ok(())
}
