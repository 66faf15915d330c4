//! A server of mail that keeps what it is handed (RFC 5321, as far as handing over one message needs it).

use std::sync::{Arc, Mutex};

use tokio::io::{AsyncBufReadExt, AsyncWriteExt, BufReader};
use tokio::net::{TcpListener, TcpStream};

/// One message: to whom, and its text with the headers.
type Letter = (String, String);

/// A server of mail on a free port of this machine.
pub struct Letterbox {
    /// Its address, as the portal's setting says it.
    pub url: String,
    letters: Arc<Mutex<Vec<Letter>>>,
    refuses: Arc<Mutex<bool>>,
}

impl Letterbox {
    /// One that takes everything.
    pub async fn open() -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").await.expect("a free port");
        let url = format!("smtp://{}", listener.local_addr().expect("it has an address"));
        let (letters, refuses) = (Arc::<Mutex<Vec<Letter>>>::default(), Arc::<Mutex<bool>>::default());
        let (kept, full) = (letters.clone(), refuses.clone());
        tokio::spawn(async move {
            while let Ok((stream, _)) = listener.accept().await {
                tokio::spawn(talk(stream, kept.clone(), full.clone()));
            }
        });
        Self { url, letters, refuses }
    }

    /// From now on it takes nothing, or takes again.
    pub fn refuse(&self, refuses: bool) {
        *self.refuses.lock().expect("nobody panicked") = refuses;
    }

    /// What came since this was last asked.
    #[must_use]
    pub fn empty(&self) -> Vec<Letter> {
        std::mem::take(&mut self.letters.lock().expect("nobody panicked"))
    }
}

async fn talk(stream: TcpStream, kept: Arc<Mutex<Vec<Letter>>>, full: Arc<Mutex<bool>>) -> std::io::Result<()> {
    let (read, mut write) = stream.into_split();
    let mut lines = BufReader::new(read).lines();
    write.write_all(b"220 letterbox\r\n").await?;
    let (mut to, mut text) = (String::new(), None::<String>);
    while let Some(line) = lines.next_line().await? {
        if let Some(body) = &mut text {
            if line == "." {
                let letter = (std::mem::take(&mut to), std::mem::take(body));
                kept.lock().expect("nobody panicked").push(letter);
                text = None;
                write.write_all(b"250 kept\r\n").await?;
            } else {
                body.push_str(line.strip_prefix('.').unwrap_or(&line));
                body.push('\n');
            }
            continue;
        }
        let refuses = *full.lock().expect("nobody panicked");
        let answer = match line.split([' ', ':']).next().unwrap_or_default().to_ascii_uppercase().as_str() {
            "EHLO" | "HELO" | "RSET" | "NOOP" => "250 letterbox",
            "MAIL" if refuses => "452 no room",
            "MAIL" => "250 go on",
            "RCPT" => {
                line.split(['<', '>']).nth(1).unwrap_or_default().clone_into(&mut to);
                "250 go on"
            }
            "DATA" => {
                text = Some(String::new());
                "354 go on"
            }
            "QUIT" => {
                write.write_all(b"221 bye\r\n").await?;
                return Ok(());
            }
            _ => "500 what",
        };
        write.write_all(format!("{answer}\r\n").as_bytes()).await?;
    }
    Ok(())
}
