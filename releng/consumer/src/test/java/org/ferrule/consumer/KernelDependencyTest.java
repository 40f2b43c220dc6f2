/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.consumer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.module.ModuleFinder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

/** What the kernel's jars need, as the JDK's own tool tells it. */
class KernelDependencyTest {

    @Test
    void looksAtEveryBundleOfTheKernel() {
        List<Path> jars = Kernel.jars();
        Kernel.BUNDLES.forEach(bundle -> assertTrue(jars.stream().anyMatch(jar -> Kernel.isOf(jar, bundle)), bundle));
    }

    @Test
    void needsNoPlatformModuleButJavaBase() {
        assertEquals(Set.of("java.base"), neededBy(Kernel.jars()));
    }

    @Test
    void noticesWhatElseIsNeeded() {
        assertEquals(Set.of("java.base", "not found"), neededBy(List.of(Path.of("target/test-classes"))));
    }

    /** Modules and "not found" that jdeps names at the heads of its arrows, less the given jars. */
    private static Set<String> neededBy(List<Path> jars) {
        assertFalse(jars.isEmpty(), "no jar of the kernel: run the build at least to package");
        List<String> arguments = new ArrayList<>(List.of("-s", "--multi-release", "17"));
        jars.forEach(jar -> arguments.add(jar.toString()));
        return run(arguments).lines().map(line -> line.substring(line.indexOf("->") + 2).strip())
                .filter(head -> jars.stream().noneMatch(jar -> isNamed(head, jar)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** jdeps names a plain jar by its path, and one with a module description by its module. */
    private static boolean isNamed(String head, Path jar) {
        return head.equals(jar.toString()) || head.equals(jar.getFileName().toString())
                || ModuleFinder.of(jar).findAll().stream().anyMatch(m -> m.descriptor().name().equals(head));
    }

    private static String run(List<String> arguments) {
        StringWriter out = new StringWriter();
        PrintWriter writer = new PrintWriter(out);
        int code = ToolProvider.findFirst("jdeps").orElseThrow().run(writer, writer,
                arguments.toArray(String[]::new));
        assertEquals(0, code, out.toString());
        return out.toString();
    }
}
