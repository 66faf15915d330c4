//! What a packet on the emulated link is, by its headers.

/// Whether an IPv4 packet (RFC 791) is a TCP segment (RFC 9293) with the flag ACK alone and no data.
pub fn only_acknowledges(packet: &[u8]) -> bool {
    const TCP: u8 = 6;
    const ACK: u8 = 0x10;
    let words = |byte: u8| usize::from(byte) * 4;
    let Some(first) = packet.first() else { return false };
    let header = words(first & 0x0f);
    if first >> 4 != 4 || packet.get(9) != Some(&TCP) {
        return false;
    }
    matches!((packet.get(header + 12), packet.get(header + 13)), (Some(offset), Some(&ACK)) if packet.len() == header + words(offset >> 4))
}

#[cfg(test)]
mod tests {
    use super::only_acknowledges;

    /// Byte 13 of a TCP header, RFC 9293 section 3.1.
    const ACK: u8 = 0x10;
    const PSH: u8 = 0x08;
    const SYN: u8 = 0x02;
    const FIN: u8 = 0x01;

    /// A packet by the layouts of RFC 791 section 3.1 (version and header length in byte 0, protocol in byte 9) and RFC 9293 section 3.1
    /// (header length in byte 12, flags in byte 13); all else is 0. `options`: 32-bit words of options in the IPv4 and the TCP header.
    fn packet(protocol: u8, options: (u8, u8), flags: u8, data: usize) -> Vec<u8> {
        let (ip, tcp) = (5 + options.0, 5 + options.1);
        let at = usize::from(ip) * 4;
        let mut bytes = vec![0; at + usize::from(tcp) * 4 + data];
        bytes[0] = 0x40 | ip;
        bytes[9] = protocol;
        bytes[at + 12] = tcp << 4;
        bytes[at + 13] = flags;
        bytes
    }

    #[test]
    fn a_bare_acknowledgement_is_one_with_or_without_options() {
        for options in [(0, 0), (0, 3), (1, 0), (10, 10)] {
            assert!(only_acknowledges(&packet(6, options, ACK, 0)), "{options:?}");
        }
    }

    #[test]
    fn data_openings_endings_and_other_protocols_are_none() {
        for (protocol, flags, data) in [(6, ACK, 1), (6, ACK | PSH, 40), (6, SYN, 0), (6, SYN | ACK, 0), (6, FIN | ACK, 0), (17, ACK, 0)] {
            assert!(
                !only_acknowledges(&packet(protocol, (0, 3), flags, data)),
                "protocol {protocol}, flags {flags:#x}, {data} bytes of data"
            );
        }
    }

    #[test]
    fn what_is_cut_short_or_of_another_version_is_none() {
        let whole = packet(6, (0, 3), ACK, 0);
        for length in 0..whole.len() {
            assert!(!only_acknowledges(&whole[..length]), "{length} bytes");
        }
        let mut sixth = whole;
        sixth[0] = 0x65;
        assert!(!only_acknowledges(&sixth));
    }
}
