//! Zips that no honest program writes.

/// One file of a zip, with what its heads say of it.
#[derive(Clone)]
pub struct Entry {
    pub name: Vec<u8>,
    pub method: u16,
    pub flags: u16,
    pub says_size: u32,
    pub crc: u32,
    pub data: Vec<u8>,
}

impl Entry {
    /// An honest one, stored as it is.
    pub fn stored(name: &str, data: &[u8]) -> Self {
        let (says_size, crc) = (u32::try_from(data.len()).unwrap_or(u32::MAX), rawzip::crc32(data));
        Self { name: name.as_bytes().to_vec(), method: 0, flags: 0, says_size, crc, data: data.to_vec() }
    }

    /// An honest one, deflated.
    pub fn deflated(name: &str, data: &[u8]) -> Self {
        let packed = miniz_oxide::deflate::compress_to_vec(data, 6);
        Self { method: 8, data: packed, ..Self::stored(name, data) }
    }

    fn shared(&self) -> Vec<u8> {
        let size = u32::try_from(self.data.len()).unwrap_or(u32::MAX);
        let name = u16::try_from(self.name.len()).unwrap_or(u16::MAX);
        let mut bytes: Vec<u8> =
            [20, self.flags, self.method, 0, 0x21].iter().flat_map(|v: &u16| v.to_le_bytes()).collect();
        bytes.extend([self.crc, size, self.says_size].iter().flat_map(|v| v.to_le_bytes()));
        bytes.extend([name, 0].iter().flat_map(|v| v.to_le_bytes()));
        bytes
    }
}

/// The zip of these files.
pub fn zip(entries: &[Entry]) -> Vec<u8> {
    let (mut bytes, mut directory) = (Vec::new(), Vec::new());
    for entry in entries {
        let offset = u32::try_from(bytes.len()).unwrap_or(u32::MAX);
        directory.extend([b"PK\x01\x02\x14\0".to_vec(), entry.shared(), vec![0; 10]].concat());
        directory.extend([&offset.to_le_bytes(), entry.name.as_slice()].concat());
        bytes.extend([b"PK\x03\x04".to_vec(), entry.shared(), entry.name.clone(), entry.data.clone()].concat());
    }
    end(bytes, &directory, entries.len())
}

fn end(mut bytes: Vec<u8>, directory: &[u8], count: usize) -> Vec<u8> {
    let size = |length: usize| u32::try_from(length).unwrap_or(u32::MAX).to_le_bytes();
    let offset = size(bytes.len());
    let count = u16::try_from(count).unwrap_or(u16::MAX).to_le_bytes();
    bytes.extend(directory);
    bytes.extend([b"PK\x05\x06\0\0\0\0".as_slice(), &count, &count, &size(directory.len()), &offset, b"\0\0"].concat());
    bytes
}
