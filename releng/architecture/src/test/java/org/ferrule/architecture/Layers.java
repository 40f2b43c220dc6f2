/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;

/**
 * The table of who sees whom. A bundle's root package is its name; a package belongs to the bundle with the longest
 * name that it starts with, so that org.ferrule.model.edit is not part of org.ferrule.model.
 */
final class Layers {

    /** Plain Java, java.base alone. */
    static final Set<String> KERNEL = Set.of("quantity", "geometry", "flow", "statistics", "mechanics", "balloon",
            "calc", "fit", "escalation", "picture", "chart", "shelf", "order", "thresholds",
            "plansheet", "profile");

    private static final String ROOT = "org.ferrule.";
    private static final Map<String, String> SEES = new HashMap<>();

    static {
        SEES.put("quantity", "");
        SEES.put("geometry", "quantity");
        SEES.put("flow", "quantity geometry");
        SEES.put("statistics", "quantity");
        SEES.put("mechanics", "");
        SEES.put("balloon", "quantity statistics");
        SEES.put("order", "");
        SEES.put("thresholds", "");
        SEES.put("calc", "quantity geometry flow statistics mechanics balloon order thresholds");
        SEES.put("fit", "quantity geometry flow statistics");
        SEES.put("escalation", "quantity fit shelf order");
        SEES.put("picture", "");
        SEES.put("shelf", "");
        SEES.put("purchase", "shelf");
        SEES.put("io.sheet", "shelf");
        SEES.put("chart", "quantity geometry statistics fit picture");
        SEES.put("plansheet", "quantity geometry fit picture chart shelf order escalation");
        SEES.put("profile", "quantity geometry mechanics balloon fit picture chart");
        SEES.put("model", "quantity shelf thresholds");
        SEES.put("model.edit", "quantity model");
        SEES.put("samples", "quantity model");
        SEES.put("io.json", "quantity model");
        SEES.put("io.fonts", "picture");
        SEES.put("io.pdf", "picture chart io.fonts");
        SEES.put("io.svg", "picture chart");
        SEES.put("io.png", "picture io.fonts");
        SEES.put("io.csv", "quantity fit chart");
        SEES.put("engine",
                "quantity geometry fit picture chart model escalation shelf order thresholds plansheet purchase");
        SEES.put("cli",
                "quantity geometry statistics calc fit picture chart shelf order escalation plansheet purchase model io.json io.pdf "
                        + "io.svg io.csv engine balloon profile");
        SEES.put("ui", "quantity geometry fit picture chart model model.edit io.json engine");
        SEES.put("ui.devices", SEES.get("ui") + " ui balloon");
        SEES.put("ui.fit", SEES.get("ui") + " ui calc io.pdf io.svg io.csv");
        SEES.put("ui.profile", SEES.get("ui.fit") + " ui.fit balloon profile");
        SEES.put("ui.escalation", SEES.get("ui.fit") + " ui.fit shelf order escalation plansheet");
        SEES.put("link.collections", "");
        SEES.put("link.logging", "");
        SEES.put("product", "");
    }

    private Layers() {
    }

    /** Names of all bundles in the table, without the common prefix. */
    static List<String> bundles() {
        return List.copyOf(new TreeSet<>(SEES.keySet()));
    }

    static String bundleName(String shortName) {
        return ROOT + shortName;
    }

    /** The bundle sees nothing of this project but itself and what the table grants. */
    static ArchRule seesOnlyWhatLiesBelow(String bundle) {
        Set<String> granted = new TreeSet<>(Arrays.asList(SEES.get(bundle).split(" ")));
        granted.add(bundle);
        return classes().that(areIn(bundle)).should().onlyDependOnClassesThat(
                describe("are of " + granted + " or foreign", type -> isForeign(type) || granted.contains(owner(type))))
                .allowEmptyShould(true);
    }

    static DescribedPredicate<JavaClass> areIn(String bundle) {
        return describe("are in " + bundle, type -> bundle.equals(owner(type)));
    }

    static DescribedPredicate<JavaClass> areInKernel() {
        return describe("are in the kernel", type -> KERNEL.contains(owner(type)));
    }

    /** The bundle that a class belongs to; empty where it is none of the table's. */
    static String owner(JavaClass type) {
        String name = type.getPackageName() + ".";
        return SEES.keySet().stream().filter(bundle -> name.startsWith(ROOT + bundle + "."))
                .max(Comparator.comparingInt(String::length)).orElse("");
    }

    private static boolean isForeign(JavaClass type) {
        return !type.getBaseComponentType().getPackageName().startsWith(ROOT);
    }
}
