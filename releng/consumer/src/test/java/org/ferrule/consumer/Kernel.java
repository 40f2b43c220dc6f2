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

    /** The bundles of the kernel. */
    static final List<String> BUNDLES = List.of("quantity", "geometry", "flow", "statistics", "mechanics", "balloon",
            "order", "thresholds", "calc", "fit", "shelf", "escalation", "picture", "chart", "plansheet",
            "profile");
    private static final String NUMERICS = "commons-numbers-";

    private Kernel() {
    }

    /** The jars of the kernel, and their numeric library. */
    static List<Path> jars() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator)).map(Path::of)
                .filter(Kernel::isOfKernel).toList();
    }

    private static boolean isOfKernel(Path entry) {
        return entry.getFileName().toString().startsWith(NUMERICS)
                || BUNDLES.stream().anyMatch(bundle -> isOf(entry, bundle));
    }

    /** Whether it is the jar of that bundle. */
    static boolean isOf(Path entry, String bundle) {
        return entry.getFileName().toString().startsWith("org.ferrule." + bundle + "-");
    }
}
