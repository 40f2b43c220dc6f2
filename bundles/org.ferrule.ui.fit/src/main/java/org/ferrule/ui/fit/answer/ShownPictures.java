/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.ferrule.ui.look.DropDown;
import org.ferrule.chart.drawing.CrossSectionDrawing;
import org.ferrule.chart.drawing.EvidenceDrawing;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.evidence.SharedSection;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.picture.Picture;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PictureMaker;
import org.ferrule.ui.picture.PictureOwner;

/**
 * The pictures of an answer, one at a time: the section across at the place that decides, and what each check has to
 * show. The choice stays where it was for the next answer, if that has such a picture.
 */
final class ShownPictures {

    private static final int LEAST_WIDTH = 80;
    private static final String ACROSS = "Across, at the place that decides";

    /** A picture by its name. */
    private record Named(String name, PictureMaker maker) {
    }

    private final Composite control;
    private final DropDown choice;
    private final PictureCanvas canvas;
    private List<Named> pictures = List.of();
    private String chosen = ACROSS;

    ShownPictures(Composite parent) {
        control = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(control);
        choice = new DropDown(control, LEAST_WIDTH).explained("Which picture of the answer is shown")
                .onChoice(this::choose);
        canvas = new PictureCanvas(control);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
    }

    Control control() {
        return control;
    }

    /** Sets what is known about the pictures when they leave the program. */
    void ownedBy(Supplier<PictureOwner> owner) {
        canvas.ownedBy(owner);
    }

    void show(AskedPair pair, PhaseAnswer answer, Phase phase) {
        pictures = named(pair, answer, phase);
        choice.show(pictures.stream().map(Named::name).toList(), place());
        showChoice(pictures.size() > 1);
        draw();
    }

    List<String> names() {
        return pictures.stream().map(Named::name).toList();
    }

    Optional<Picture> shown() {
        return canvas.picture();
    }

    void clear() {
        pictures = List.of();
        showChoice(false);
        canvas.clear("");
    }

    private void choose() {
        chosen = choice.text();
        draw();
    }

    private void showChoice(boolean shown) {
        choice.control().setVisible(shown);
        ((GridData) choice.control().getLayoutData()).exclude = !shown;
        control.layout();
    }

    private int place() {
        for (int i = 0; i < pictures.size(); i++) {
            if (pictures.get(i).name().equals(chosen)) {
                return i;
            }
        }
        return 0;
    }

    private void draw() {
        if (!pictures.isEmpty()) {
            canvas.draw(pictures.get(place()).maker());
        }
    }

    private static List<Named> named(AskedPair pair, PhaseAnswer answer, Phase phase) {
        ReasonWords words = ReasonWords.english(ShownUnits.now());
        List<Named> named = new ArrayList<>();
        boolean shared = !pair.question().conditions().alone()
                && answer.evidence().stream().anyMatch(SharedSection.class::isInstance);
        if (!shared) {
            CrossSectionDrawing across = new CrossSectionDrawing(words);
            named.add(new Named(ACROSS,
                    (width, height) -> across.ofPair(pair.question(), answer, phase, width, height)));
        }
        EvidenceDrawing drawing = new EvidenceDrawing(words);
        for (Evidence evidence : answer.evidence()) {
            if (shared || !(evidence instanceof SharedSection)) {
                named.add(new Named(numbered(drawing.title(evidence), named),
                        (width, height) -> drawing.of(evidence, width, height)));
            }
        }
        return named;
    }

    /** Pictures of one kind are told apart by a number. */
    private static String numbered(String title, List<Named> before) {
        long same = before.stream().filter(n -> n.name().equals(title) || n.name().startsWith(title + " (")).count();
        return same == 0 ? title : title + " (" + (same + 1) + ")";
    }
}
