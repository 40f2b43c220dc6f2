/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.shipping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A jar without classes whose manifest names a main class and, relative to itself, the bundles that it needs. It lets
 * a start script on any system say {@code java -jar} instead of spelling a class path.
 */
final class StartJar {

    /** Fixed, so that the same product gives the same bytes. */
    private static final FileTime WRITTEN = FileTime.from(Instant.parse("2026-11-25T00:00:00Z"));

    private final String mainClass;

    StartJar(String mainClass) {
        this.mainClass = mainClass;
    }

    /**
     * Writes the jar.
     *
     * @param jar where to; the plugins folder lies beside it
     * @param needed the bundles as the module depends on them
     * @param shipped the bundles of the product
     * @throws IOException if the jar cannot be written
     * @throws ShippingException if a needed bundle is not shipped
     */
    void write(Path jar, List<Bundle> needed, List<Bundle> shipped) throws IOException {
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.put(Attributes.Name.MAIN_CLASS, mainClass);
        main.put(Attributes.Name.CLASS_PATH, classPath(needed, shipped));
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(jar))) {
            ZipEntry entry = new ZipEntry(JarFile.MANIFEST_NAME);
            entry.setLastModifiedTime(WRITTEN);
            out.putNextEntry(entry);
            manifest.write(out);
            out.closeEntry();
        }
    }

    private static String classPath(List<Bundle> needed, List<Bundle> shipped) {
        Map<String, Bundle> byName = shipped.stream()
                .collect(Collectors.toMap(Bundle::name, Function.identity(), (first, second) -> second));
        return needed.stream().map(bundle -> find(byName, bundle)).collect(Collectors.joining(" "));
    }

    private static String find(Map<String, Bundle> shipped, Bundle needed) {
        Bundle bundle = shipped.get(needed.name());
        if (bundle == null) {
            throw new ShippingException("the product ships no " + needed.name() + ", which the command line needs");
        }
        return bundle.file().getParent().getFileName() + "/" + bundle.file().getFileName();
    }
}
