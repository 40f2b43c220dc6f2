/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Finds widgets on the screen by what a user would look for. */
public final class Widgets {

    private Widgets() {
    }

    /** Returns all visible controls of the type inside the parent. */
    public static <C extends Control> Stream<C> all(Composite parent, Class<C> type) {
        return Stream.of(parent.getChildren()).filter(Control::isVisible)
                .flatMap(child -> Stream.concat(type.isInstance(child) ? Stream.of(type.cast(child)) : Stream.empty(),
                        child instanceof Composite inner ? all(inner, type) : Stream.empty()));
    }

    /** Returns the first visible control of the type that satisfies the condition. */
    public static <C extends Control> Optional<C> first(Composite parent, Class<C> type, Predicate<C> condition) {
        return all(parent, type).filter(condition).findFirst();
    }

    /** Returns the button with the text. */
    public static Button button(Composite parent, String text) {
        return first(parent, Button.class, button -> button.getText().replace("&", "").equals(text))
                .orElseThrow(() -> new AssertionError("there is no button " + text));
    }

    /** Returns the control of the type that follows the label with the text, or lies in what follows it. */
    public static <C extends Control> C labelled(Composite parent, String text, Class<C> type) {
        Label label = first(parent, Label.class, l -> l.getText().replace("&", "").equals(text))
                .orElseThrow(() -> new AssertionError("there is no label " + text));
        Control[] siblings = label.getParent().getChildren();
        return Stream.of(siblings).dropWhile(sibling -> sibling != label).flatMap(sibling -> in(sibling, type))
                .findFirst().orElseThrow(() -> new AssertionError("nothing follows the label " + text));
    }

    private static <C extends Control> Stream<C> in(Control control, Class<C> type) {
        if (type.isInstance(control)) {
            return Stream.of(type.cast(control));
        }
        return control instanceof Composite composite ? all(composite, type) : Stream.empty();
    }
}
