package org.fandown.app.keys;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where the key of a site lies: a PKCS#12 file with the key and its certificate. */
public final class SiteKeyFile {
    /** The file of the key that is made on first use. */
    public static final String NAME = "site-key.p12";

    /** The certificate of that key alone, to be given to whoever checks. */
    public static final String CERTIFICATE = "site-certificate.pem";

    /** The password of that key, if nobody chose one. */
    private static final String PASSWORD = "site-key.password";

    private static final int BITS = 3072;
    private static final int PASSWORD_BYTES = 32;
    private static final String ALIAS = "site";

    private SiteKeyFile() {}

    /**
     * Opens the key of a folder, and makes one on first use.
     *
     * @param folder the folder of the records
     * @param site the name in the certificate of a new key
     * @param password the password; empty for one that lies beside the key, which its owner alone
     *     can read
     * @throws KeyException if it cannot be read or made
     */
    public static SiteKey openOrMake(Path folder, String site, Optional<char[]> password) {
        Path file = folder.resolve(NAME);
        try {
            Files.createDirectories(folder);
            char[] used = password.isPresent() ? password.get() : own(folder.resolve(PASSWORD));
            if (!Files.exists(file)) {
                make(folder, site, used);
            }
            return open(file, used);
        } catch (FileAlreadyExistsException e) {
            // Another made it at the same time, with the same password.
            return openOrMake(folder, site, password);
        } catch (IOException | GeneralSecurityException e) {
            throw new KeyException(
                    "The key "
                            + file
                            + " cannot be made: "
                            + e.getMessage()
                            + ". Next: make the folder writable, or name a key of your own.",
                    e);
        }
    }

    /** Opens a key. */
    public static SiteKey open(Path file, char[] password) {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            try (var in = Files.newInputStream(file)) {
                store.load(in, password);
            }
            return first(store, password);
        } catch (IOException | GeneralSecurityException e) {
            throw new KeyException(
                    "The key "
                            + file
                            + " cannot be read: "
                            + e.getMessage()
                            + ". Allowed: a PKCS#12 file with one RSA or EC key and its"
                            + " certificate. Next: check the file and its password.",
                    e);
        }
    }

    private static SiteKey first(KeyStore store, char[] password)
            throws GeneralSecurityException, IOException {
        for (String alias : Collections.list(store.aliases())) {
            Key key = store.getKey(alias, password);
            Certificate[] chain = store.getCertificateChain(alias);
            if (key instanceof PrivateKey found && chain != null) {
                List<X509Certificate> certificates = new ArrayList<>();
                for (Certificate each : chain) {
                    certificates.add((X509Certificate) each);
                }
                return new SiteKey(found, certificates);
            }
        }
        throw new IOException("no key is in it");
    }

    /** The password beside the key; whoever comes first makes it. */
    private static char[] own(Path file) throws IOException {
        byte[] random = new byte[PASSWORD_BYTES];
        new SecureRandom().nextBytes(random);
        try {
            keep(file, HexFormat.of().formatHex(random).getBytes(StandardCharsets.US_ASCII));
        } catch (FileAlreadyExistsException e) {
            // It was made before, and is read below.
        }
        return Files.readString(file).strip().toCharArray();
    }

    private static void make(Path folder, String site, char[] password)
            throws IOException, GeneralSecurityException {
        KeyPairGenerator generator = KeyPairGenerator.getInstance("RSA");
        generator.initialize(BITS);
        KeyPair pair = generator.generateKeyPair();
        X509Certificate certificate = CertificateMaker.make(pair, site, Instant.now());
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, password);
        store.setKeyEntry(ALIAS, pair.getPrivate(), password, new Certificate[] {certificate});
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        store.store(bytes, password);
        keep(folder.resolve(NAME), bytes.toByteArray());
        Files.write(folder.resolve(CERTIFICATE), Certificates.pem(certificate));
    }

    /** Writes a file whole; of two that do so at once, one stays. */
    private static void keep(Path file, byte[] bytes) throws IOException {
        Path draft =
                file.resolveSibling(
                        "." + file.getFileName() + "-" + ProcessHandle.current().pid() + ".part");
        Files.deleteIfExists(draft);
        write(draft, bytes);
        try {
            Files.createLink(file, draft);
        } finally {
            Files.delete(draft);
        }
    }

    /** Writes a new file that its owner alone can read. */
    private static void write(Path file, byte[] bytes) throws IOException {
        boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        FileAttribute<?>[] rights =
                posix
                        ? new FileAttribute<?>[] {
                            PosixFilePermissions.asFileAttribute(
                                    PosixFilePermissions.fromString("rw-------"))
                        }
                        : new FileAttribute<?>[0];
        try (var channel =
                Files.newByteChannel(
                        file,
                        Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
                        rights)) {
            channel.write(java.nio.ByteBuffer.wrap(bytes));
        }
    }
}
