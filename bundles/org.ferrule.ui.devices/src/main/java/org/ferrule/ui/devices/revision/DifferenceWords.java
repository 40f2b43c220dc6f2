/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.revision;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.engine.revision.Difference;
import org.ferrule.engine.revision.Difference.Kind;
import org.ferrule.model.Document;
import org.ferrule.quantity.Length;
import org.ferrule.ui.devices.part.CellWords;
import org.ferrule.ui.look.ModelLabels;
import org.ferrule.ui.preferences.FigureWords;

/** What is said about differences. */
final class DifferenceWords {

    private static final String BETWEEN = " \u203a ";
    private static final String BETWEEN_UNITS = "\u00b7  ";

    private final FigureWords figures;

    DifferenceWords(FigureWords figures) {
        this.figures = figures;
    }

    /** What an entry is called: kind, id and name. */
    static String entry(EObject entry) {
        if (entry instanceof Document) {
            return "The library as a whole";
        }
        String id = text(entry, "id");
        String name = text(entry, "name");
        String type = ModelLabels.type(entry.eClass());
        return type + (id.isEmpty() ? "" : " " + id) + (name.isEmpty() ? "" : "  \u2013  " + name);
    }

    private static String text(EObject object, String feature) {
        EStructuralFeature found = object.eClass().getEStructuralFeature(feature);
        return found == null ? "" : CellWords.of(object, found);
    }

    /** Where in its entry a difference is, and what it is. */
    static String place(Difference difference) {
        if (difference.part().filter(part -> part == difference.entry()).isPresent()) {
            return "The whole " + ModelLabels.type(difference.entry().eClass()).toLowerCase();
        }
        List<String> steps = new ArrayList<>();
        EObject object = difference.after();
        while (object != null && !(object instanceof Document) && object.eContainer() != null
                && !(object.eContainer() instanceof Document)) {
            steps.add(step(object));
            object = object.eContainer();
        }
        Collections.reverse(steps);
        steps.add(difference.part().map(DifferenceWords::step)
                .orElseGet(() -> ModelLabels.feature(difference.feature())));
        return String.join(BETWEEN, steps);
    }

    private static String step(EObject part) {
        String name = text(part, "name");
        return ModelLabels.type(part.eClass()) + (name.isEmpty() ? "" : " " + name);
    }

    /** What the other revision says. */
    static String before(Difference difference) {
        return side(difference, Kind.REMOVED, difference.before());
    }

    /** What the document says now. */
    static String after(Difference difference) {
        return side(difference, Kind.ADDED, difference.after());
    }

    private static String side(Difference difference, Kind there, EObject holder) {
        if (difference.kind() == Kind.CHANGED) {
            String text = CellWords.of(holder, difference.feature());
            return text.isEmpty() ? "not stated" : text;
        }
        return difference.kind() == there ? summary(difference.part().orElseThrow()) : "not there";
    }

    /** The values of a part itself, in the order of the document. */
    private static String summary(EObject part) {
        List<String> values = part.eClass().getEAllAttributes().stream().filter(part::eIsSet)
                .map((EAttribute attribute) -> CellWords.of(part, attribute)).filter(text -> !text.isBlank()).toList();
        return values.isEmpty() ? "there" : String.join(", ", values);
    }

    /** By how much a figure differs, in the preferred units, and what else does. */
    String growth(Difference difference) {
        if (difference.kind() != Kind.CHANGED) {
            return difference.kind() == Kind.ADDED ? "only here" : "only there";
        }
        String words = difference.growth().map(this::signed).orElse("");
        return difference.changesMeaning() ? words + (words.isEmpty() ? "" : ", ") + "another meaning" : words;
    }

    private String signed(Length growth) {
        return growth.equals(Length.ZERO) ? "same size"
                : growth.isNegative() ? figures.of(growth, null)
                        : "+" + figures.of(growth, null).replace(BETWEEN_UNITS, BETWEEN_UNITS + "+");
    }

    /** Tells whether a difference has all of the words, in any of its columns. */
    boolean matches(Difference difference, List<String> words) {
        String all = String.join(" ", entry(difference.entry()), place(difference), before(difference),
                after(difference), growth(difference)).toLowerCase();
        return words.stream().allMatch(all::contains);
    }

    /** Tells whether an entry came or went as a whole. */
    static boolean isWhole(Difference difference) {
        return difference.part().filter(part -> EcoreUtil.isAncestor(part, difference.entry())).isPresent();
    }
}
