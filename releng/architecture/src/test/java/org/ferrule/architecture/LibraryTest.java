/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;

/** Which bundles may use which library. */
class LibraryTest {

    private static final String[] JAVA_BASE = { "java.io..", "java.lang..", "java.math..", "java.net..", "java.nio..",
        "java.security..", "java.text..", "java.time..", "java.util", "java.util.concurrent..", "java.util.function",
        "java.util.random", "java.util.regex", "java.util.stream", "java.util.zip" };

    /** The one library of the kernel: special functions for tolerance factors; plain Java itself. */
    private static final String NUMERICS = "org.apache.commons.numbers..";

    private static JavaClasses classes;

    @BeforeAll
    static void readClasses() throws IOException {
        classes = Bundles.classes();
    }

    @Test
    void kernelIsPlainJava() {
        kernelIsPlain().check(classes);
    }

    @Test
    void noticesAKernelThatPaints() {
        JavaClasses bent = new ClassFileImporter().importClasses(org.ferrule.quantity.bent.Paints.class);
        assertTrue(kernelIsPlain().evaluate(bent).hasViolation());
    }

    @ParameterizedTest
    @CsvSource({
        "org.apache.commons.numbers..,   statistics",
        "com.fasterxml.jackson..,        io.json cli",
        "org.apache.pdfbox..,            io.pdf",
        "org.apache.commons.csv..,       io.csv io.sheet",
        "org.dhatim.fastexcel..,         io.sheet",
        "picocli..,                      cli",
        "org.ojalgo..,                   purchase",
        "org.eclipse.emf.ecore..,        model model.edit io.json engine cli ui ui.devices ui.fit ui.profile ui.escalation",
        "org.eclipse.emf.edit..,         model.edit ui ui.devices ui.fit ui.profile ui.escalation",
        "org.eclipse.nebula..,           ui ui.devices ui.fit ui.profile ui.escalation",
        "org.eclipse.swt..,              ui ui.devices ui.fit ui.profile ui.escalation",
        "org.eclipse.jface..,            ui ui.devices ui.fit ui.profile ui.escalation",
        "org.eclipse.ui..,               ui ui.devices ui.fit ui.profile ui.escalation",
        "org.eclipse.core.resources..,   ui ui.devices ui.fit ui.profile ui.escalation",
        "org.osgi..,                     ui ui.devices ui.fit ui.profile ui.escalation engine",
        "java.awt..,                     io.pdf io.png",
        "javax.swing..,                  nobody" })
    void onlyItsUsersSeeTheLibrary(String packages, String users) {
        users(packages, List.of(users.split(" "))).check(classes);
    }

    @Test
    void noticesASecondUserOfALibrary() {
        JavaClasses bent = new ClassFileImporter().importClasses(org.ferrule.quantity.bent.Paints.class);
        assertTrue(users("java.awt..", List.of("io.pdf")).evaluate(bent).hasViolation());
    }

    @Test
    void onlyTheCommandLineWritesToTheConsole() {
        noClasses().that(describe("are not the command line", type -> !"cli".equals(Layers.owner(type))))
                .should().accessField(System.class, "out").orShould().accessField(System.class, "err")
                .orShould().callMethod(Throwable.class, "printStackTrace").check(classes);
    }

    private static ArchRule kernelIsPlain() {
        return classes().that(Layers.areInKernel()).should().onlyDependOnClassesThat(
                describe("are of java.base or the kernel", type -> isPlain(type.getBaseComponentType())));
    }

    private static boolean isPlain(JavaClass type) {
        return type.isPrimitive() || Layers.KERNEL.contains(Layers.owner(type))
                || resideInAnyPackage(JAVA_BASE).or(resideInAnyPackage(NUMERICS)).test(type);
    }

    private static ArchRule users(String packages, List<String> bundles) {
        return noClasses().that(describe("are of none of " + bundles, type -> !bundles.contains(Layers.owner(type))))
                .should().dependOnClassesThat().resideInAnyPackage(packages);
    }
}
