//! A passkey device in a few lines, written from W3C Web Authentication Level 3 (sections 5.8.1, 6.1,
//! 6.5.1, 7.1 and 7.2) and RFC 9052/9053 (keys in COSE), independently of the crate under test.

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use p256::ecdsa::signature::Signer;
use p256::ecdsa::{Signature, SigningKey};
use serde_json::{Value, json};
use sha2::{Digest, Sha256};

/// A device with one passkey.
pub struct Device {
    key: SigningKey,
    id: Vec<u8>,
    user: String,
    /// Its signature counter; 0 for good when it has none.
    pub counter: u32,
    /// Whether it checks who holds it.
    pub verifies: bool,
    /// The page it believes to be on.
    pub origin: String,
}

/// Flags of authenticator data (section 6.1): present, verified, has attested credential data.
const PRESENT: u8 = 0x01;
const VERIFIED: u8 = 0x04;
const ATTESTED: u8 = 0x40;

fn encode(bytes: &[u8]) -> String {
    URL_SAFE_NO_PAD.encode(bytes)
}

impl Device {
    /// A device that has no passkey yet.
    pub fn new(origin: &str) -> Self {
        let (mut secret, mut id) = ([0; 32], vec![0; 32]);
        getrandom::fill(&mut secret).unwrap();
        getrandom::fill(&mut id).unwrap();
        let key = SigningKey::from_slice(&secret).unwrap();
        Self { key, id, user: String::new(), counter: 1, verifies: true, origin: origin.to_owned() }
    }

    /// Answers `navigator.credentials.create`, as `toJSON()` would write it.
    pub fn make(&mut self, options: &Value) -> Value {
        self.user = options["user"]["id"].as_str().unwrap().to_owned();
        let client = self.client_data("webauthn.create", options);
        let data = self.authenticator_data(options["rp"]["id"].as_str().unwrap(), ATTESTED);
        let mut attestation = b"\xA3\x63fmt\x64none\x67attStmt\xA0\x68authData\x59".to_vec();
        attestation.extend(u16::try_from(data.len()).unwrap().to_be_bytes());
        attestation.extend(data);
        self.credential(json!({
            "clientDataJSON": encode(client.as_bytes()), "attestationObject": encode(&attestation), "transports": ["internal"],
        }))
    }

    /// Answers `navigator.credentials.get`, as `toJSON()` would write it.
    pub fn answer(&mut self, options: &Value) -> Value {
        let client = self.client_data("webauthn.get", options);
        let data = self.authenticator_data(options["rpId"].as_str().unwrap(), 0);
        let signed = [data.as_slice(), Sha256::digest(client.as_bytes()).as_slice()].concat();
        let signature: Signature = self.key.sign(&signed);
        self.credential(json!({
            "clientDataJSON": encode(client.as_bytes()), "authenticatorData": encode(&data),
            "signature": encode(signature.to_der().as_bytes()), "userHandle": self.user,
        }))
    }

    fn client_data(&self, kind: &str, options: &Value) -> String {
        json!({ "type": kind, "challenge": options["challenge"], "origin": self.origin, "crossOrigin": false }).to_string()
    }

    fn authenticator_data(&self, rp: &str, more: u8) -> Vec<u8> {
        let mut data = Sha256::digest(rp.as_bytes()).to_vec();
        data.push(PRESENT | more | if self.verifies { VERIFIED } else { 0 });
        data.extend(self.counter.to_be_bytes());
        if more & ATTESTED != 0 {
            data.extend([0; 16]); // no make of authenticator is told
            data.extend(u16::try_from(self.id.len()).unwrap().to_be_bytes());
            data.extend(&self.id);
            data.extend(self.public_key());
        }
        data
    }

    /// EC2, ES256, P-256, x, y (RFC 9053, sections 2.1 and 7.1).
    fn public_key(&self) -> Vec<u8> {
        let point = self.key.verifying_key().to_sec1_bytes();
        assert_eq!(point.len(), 65, "uncompressed");
        [b"\xA5\x01\x02\x03\x26\x20\x01\x21\x58\x20", &point[1..33], b"\x22\x58\x20", &point[33..]].concat()
    }

    fn credential(&self, response: Value) -> Value {
        json!({
            "id": encode(&self.id), "rawId": encode(&self.id), "type": "public-key", "authenticatorAttachment": "platform",
            "clientExtensionResults": {}, "response": response,
        })
    }
}
