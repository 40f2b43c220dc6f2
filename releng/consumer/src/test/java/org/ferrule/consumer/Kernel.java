/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.consumer;

import java.io.File;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** Where this build has put the kernel's jars and the libraries that they need. */
final class Kernel {

    private static final List<String> BUNDLES = List.of("quantity", "geometry", "fit", "picture", "chart");
    private static final String NUMERICS = "commons-numbers-";

    private Kernel() {
    }

    /** The jars of the kernel, and the numeric library of the fit solver. */
    static List<Path> jars() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator)).map(Path::of)
                .filter(Kernel::isOfKernel).toList();
    }

    private static boolean isOfKernel(Path entry) {
        String name = entry.getFileName().toString();
        return name.startsWith(NUMERICS)
                || BUNDLES.stream().anyMatch(bundle -> name.startsWith("org.ferrule." + bundle + "-"));
    }
}
