/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.extension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.check.EdgeCheck;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.check.LengthCheck;
import org.ferrule.fit.check.PassageCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExtensionsTest {
    @TempDir
    private Path plugin;

    @Test
    void findsTheBuiltInChecksInTheirOrder() {
        assertEquals(classes(FitSolver.standard(List.of()).checks()),
                classes(checks(getClass().getClassLoader())));
    }

    @Test
    void takesAPluginsCheckWhereItsOrderPutsIt() throws IOException {
        assertEquals(List.of(PassageCheck.class, EdgeCheck.class, LengthCheck.class, EdgeCheck.class),
                classes(checks(with("<check class=\"org.ferrule.fit.check.EdgeCheck\" order=\"15\"/>"))).subList(0, 4));
    }

    @Test
    void namesAClassThatIsNotThere() throws IOException {
        ClassLoader loader = with("<check class=\"org.example.Missing\" order=\"15\"/>");
        ExtensionException failure = assertThrows(ExtensionException.class, () -> checks(loader));
        assertTrue(failure.getMessage().contains("org.example.Missing"), failure::getMessage);
    }

    @Test
    void namesAClassThatIsNoCheck() throws IOException {
        ClassLoader loader = with("<check class=\"java.lang.Object\"/>");
        ExtensionException failure = assertThrows(ExtensionException.class, () -> checks(loader));
        assertTrue(failure.getMessage().contains("FitCheck"), failure::getMessage);
    }

    private static List<FitCheck> checks(ClassLoader loader) {
        return Extensions.ofClassPath(loader).checks();
    }

    private static List<Class<? extends FitCheck>> classes(List<FitCheck> checks) {
        return checks.stream().<Class<? extends FitCheck>>map(FitCheck::getClass).toList();
    }

    private ClassLoader with(String element) throws IOException {
        Files.writeString(plugin.resolve("plugin.xml"), "<?xml version=\"1.0\"?><?eclipse version=\"3.4\"?><plugin>"
                + "<extension point=\"org.ferrule.engine.checks\">" + element + "</extension></plugin>");
        return new URLClassLoader(new URL[] { plugin.toUri().toURL() }, getClass().getClassLoader());
    }
}
