/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.shipping;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;

/** Makes jars with nothing but a manifest. */
final class BundleMaker {

    private final Path folder;

    BundleMaker(Path folder) {
        this.folder = folder;
    }

    Bundle bundle(String name, String version, String licence) throws IOException {
        return Bundle.read(jar(name, version, licence));
    }

    Path jar(String name, String version, String licence) throws IOException {
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.putValue("Bundle-SymbolicName", name + ";singleton:=true");
        main.putValue("Bundle-Version", version);
        if (licence != null) {
            main.putValue("Bundle-License", licence);
        }
        Files.createDirectories(folder);
        Path file = folder.resolve(name + "_" + version + ".jar");
        try (OutputStream out = Files.newOutputStream(file)) {
            new JarOutputStream(out, manifest).close();
        }
        return file;
    }

    /** A jar that is no bundle, with its Maven coordinates. */
    Path plainJar(String group, String artifact, String version) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        Files.createDirectories(folder);
        Path file = folder.resolve(artifact + "-" + version + ".jar");
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(file), manifest)) {
            out.putNextEntry(new ZipEntry("META-INF/maven/" + group + "/" + artifact + "/pom.properties"));
            out.write(("groupId=" + group + "\nartifactId=" + artifact + "\nversion=" + version + "\n")
                    .getBytes(StandardCharsets.ISO_8859_1));
            out.closeEntry();
        }
        return file;
    }
}
