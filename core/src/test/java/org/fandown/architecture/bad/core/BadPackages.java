package org.fandown.architecture.bad.core;

import java.io.File;
import java.lang.reflect.Method;
import java.net.URI;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.text.DecimalFormat;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

/** Uses packages that the core must not use. */
public abstract class BadPackages {
    abstract File file();

    abstract URI address();

    abstract Path path();

    abstract AtomicLong counter();

    abstract List<Method[]> methods();

    abstract MessageDigest digest();

    abstract DecimalFormat format();
}
