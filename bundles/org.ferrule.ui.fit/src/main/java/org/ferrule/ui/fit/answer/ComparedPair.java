/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.answer;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.LengthWords;
import org.ferrule.chart.words.PairNames;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.quantity.Length;

/** One of several answers that are compared: its devices, verdict, clearance, reasons and picture. */
final class ComparedPair {

    private static final int[] WEIGHTS = { 55, 45 };
    /** Where there is less room, words say more than a picture. */
    private static final int LEAST_WITH_PICTURE = 240;

    private final Composite control;
    private final Label title;
    private final Label icon;
    private final Label verdict;
    private final AnswerText text;
    private final ShownPictures pictures;
    private final VerdictImages images;

    ComparedPair(Composite parent) {
        control = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(5, 3).applyTo(control);
        title = new Label(control, SWT.WRAP);
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(80, SWT.DEFAULT).applyTo(title);
        images = new VerdictImages(control);
        icon = new Label(control, SWT.NONE);
        verdict = new Label(control, SWT.WRAP);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(60, SWT.DEFAULT)
                .applyTo(verdict);
        SashForm parts = new SashForm(control, SWT.VERTICAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(60, 60).applyTo(parts);
        text = new AnswerText(parts);
        pictures = new ShownPictures(parts);
        parts.setWeights(WEIGHTS);
        parts.addListener(SWT.Resize, event -> parts
                .setMaximizedControl(parts.getSize().y < LEAST_WITH_PICTURE ? text.control() : null));
    }

    Control control() {
        return control;
    }

    /** Shows an answer, and how its clearance differs from that of the first one. */
    void show(AskedPair pair, AskedPair first, Phase phase) {
        PairNames names = pair.names();
        PhaseAnswer answer = pair.answer().in(phase);
        VerdictLook look = VerdictLook.of(answer);
        title.setText((names.innerName() + "  in  " + names.outerName()).replace("&", "&&"));
        icon.setImage(images.of(look));
        LengthWords lengths = new LengthWords(ShownUnits.first());
        String clearance = worst(answer).map(worst -> ", worst clearance " + lengths.clearance(worst)).orElse("");
        verdict.setText(look.word() + clearance + (pair == first ? "" : difference(answer, first.answer().in(phase),
                lengths)));
        text.show(pair, phase);
        pictures.show(pair, answer, phase);
        control.layout(true, true);
    }

    private static Optional<Length> worst(PhaseAnswer answer) {
        return answer.clearance().map(clearance -> clearance.worst());
    }

    private static String difference(PhaseAnswer answer, PhaseAnswer first, LengthWords lengths) {
        if (worst(answer).isEmpty() || worst(first).isEmpty()) {
            return "";
        }
        Length more = worst(answer).get().minus(worst(first).get());
        if (more.equals(Length.ZERO)) {
            return ", the same as the first";
        }
        return ", " + lengths.clearance(more.abs()) + (more.isNegative() ? " less" : " more") + " than the first";
    }

    String head() {
        return title.getText() + ": " + verdict.getText();
    }

    boolean setFocus() {
        return text.control().setFocus();
    }
}
