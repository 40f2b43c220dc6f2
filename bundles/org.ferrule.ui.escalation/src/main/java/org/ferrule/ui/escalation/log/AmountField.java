/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.log;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Pattern;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.widgets.FormToolkit;

/** A field for an amount of nothing or more. */
final class AmountField {

    private static final int WIDTH = 42;
    /** Without powers of ten, by which a slip of a finger makes a number that is a million digits long. */
    private static final Pattern PLAIN = Pattern.compile("\\d{1,6}(\\.\\d{1,6})?");

    private final String label;
    private final Text text;

    AmountField(FormToolkit toolkit, Composite parent, String label) {
        this.label = label;
        toolkit.createLabel(parent, label);
        text = toolkit.createText(parent, "", SWT.BORDER | SWT.SINGLE);
        text.addListener(SWT.FocusIn, event -> text.selectAll());
        GridDataFactory.swtDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(text);
    }

    Text control() {
        return text;
    }

    void show(double amount) {
        BigDecimal tenths = BigDecimal.valueOf(amount).setScale(1, RoundingMode.HALF_EVEN).stripTrailingZeros();
        text.setText((tenths.scale() < 0 ? tenths.setScale(0) : tenths).toPlainString());
    }

    /** Returns the amount; nothing if it cannot be read. An empty field is nothing used. */
    Optional<BigDecimal> amount() {
        String typed = text.getText().strip();
        if (typed.isEmpty()) {
            return Optional.of(BigDecimal.ZERO);
        }
        return PLAIN.matcher(typed).matches() ? Optional.of(new BigDecimal(typed)) : Optional.empty();
    }

    /** Puts the cursor to what is to be typed anew. */
    void setFocus() {
        text.setFocus();
        text.selectAll();
    }

    /** Returns what is wrong; nothing if it can be read. */
    Optional<String> problem() {
        return amount().isPresent() ? Optional.empty()
                : Optional.of(
                        label + ": expected a number from 0 to 999999, such as 4 or 2.5, not \u201c" + text.getText()
                                + "\u201d");
    }
}
