/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;

/** Arrows go only down. */
class LayerTest {

    private static JavaClasses classes;

    @BeforeAll
    static void readClasses() throws IOException {
        classes = Bundles.classes();
    }

    static List<String> bundles() {
        return Layers.bundles();
    }

    static List<String> bundlesThatAreThere() throws IOException {
        return Bundles.names();
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void seesOnlyWhatLiesBelow(String bundle) {
        Layers.seesOnlyWhatLiesBelow(bundle).check(classes);
    }

    @ParameterizedTest
    @MethodSource("bundlesThatAreThere")
    void standsInTheTable(String bundle) {
        assertEquals(1, Layers.bundles().stream().map(Layers::bundleName).filter(bundle::equals).count(), bundle);
    }

    @ParameterizedTest
    @MethodSource("bundlesThatAreThere")
    void keepsItsClassesInItsOwnPackages(String bundle) throws IOException {
        List<String> strays = classes.stream().filter(type -> Bundles.isFrom(type, bundle))
                .filter(type -> !Layers.bundleName(Layers.owner(type)).equals(bundle)).map(Object::toString).toList();
        assertEquals(List.of(), strays);
    }

    @Test
    void readsTheClassesOfTheKernel() {
        assertFalse(classes.that(Layers.areInKernel()).isEmpty(), "no class of the kernel: build the bundles first");
    }

    @Test
    void noticesAnArrowThatGoesUp() {
        JavaClasses bent = new ClassFileImporter().importClasses(org.ferrule.quantity.bent.SeesUp.class);
        assertTrue(Layers.seesOnlyWhatLiesBelow("quantity").evaluate(bent).hasViolation());
    }
}
