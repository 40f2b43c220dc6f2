/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.shipping;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.Attributes;
import java.util.jar.JarFile;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartJarTest {

    @TempDir
    private Path folder;
    private BundleMaker plugins;
    private BundleMaker modules;

    @BeforeEach
    void emptyFolders() {
        plugins = new BundleMaker(folder.resolve("plugins"));
        modules = new BundleMaker(folder.resolve("modules"));
    }

    @Test
    void namesTheShippedFilesInOrder() throws IOException {
        plugins.jar("lib", "1.0.0", "MIT");
        plugins.jar("org.ferrule.cli", "0.1.0.2026", null);
        plugins.jar("unused", "1.0.0", "MIT");
        Path jar = write(modules.jar("org.ferrule.cli", "0.1.0.SNAPSHOT", null), modules.jar("lib", "1.0.0", "MIT"));
        try (JarFile file = new JarFile(jar.toFile())) {
            Attributes main = file.getManifest().getMainAttributes();
            assertEquals("org.ferrule.cli.Main", main.getValue(Attributes.Name.MAIN_CLASS));
            assertEquals("plugins/org.ferrule.cli_0.1.0.2026.jar plugins/lib_1.0.0.jar",
                    main.getValue(Attributes.Name.CLASS_PATH));
        }
    }

    @Test
    void givesTheSameBytesTwice() throws IOException {
        plugins.jar("lib", "1.0.0", "MIT");
        Path lib = modules.jar("lib", "1.0.0", "MIT");
        byte[] first = Files.readAllBytes(write(lib));
        assertArrayEquals(first, Files.readAllBytes(write(lib)));
    }

    @Test
    void findsAPlainJarByTheNameOfTheBundleThatItIsWrappedAs() throws IOException {
        plugins.jar("org.lib", "1.0.0", "MIT");
        plugins.jar("org.lib.reader", "1.0.0", "MIT");
        Path jar = write(modules.plainJar("org.lib", "lib", "1.0.0"), modules.plainJar("org.lib", "reader", "1.0.0"));
        try (JarFile file = new JarFile(jar.toFile())) {
            assertEquals("plugins/org.lib_1.0.0.jar plugins/org.lib.reader_1.0.0.jar",
                    file.getManifest().getMainAttributes().getValue(Attributes.Name.CLASS_PATH));
        }
    }

    @Test
    void rejectsBundleThatIsNotShipped() throws IOException {
        plugins.jar("lib", "1.0.0", "MIT");
        Path other = modules.jar("other", "1.0.0", "MIT");
        assertThrows(ShippingException.class, () -> write(other));
    }

    private Path write(Path... needed) throws IOException {
        String[] files = new String[needed.length];
        for (int i = 0; i < needed.length; i++) {
            files[i] = needed[i].toString();
        }
        Path classPath = Files.writeString(folder.resolve("class-path"), String.join(File.pathSeparator, files));
        Shipping.main("start-jar", "org.ferrule.cli.Main", classPath.toString(), folder.toString(), "cli.jar");
        return folder.resolve("cli.jar");
    }
}
