/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.fieldassist.ContentProposal;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.swt.SWT;
import org.ferrule.model.Document;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Source;
import org.ferrule.model.check.Severity;

/**
 * A field for the source of what an object states, by its id among the sources of the document, and for the page in
 * it. The title stands beside the id; Control and Space proposes the sources by id and title.
 */
public final class SourceField extends TypedField {

    private final MeaningLabel meaning;
    private final TextField page;

    SourceField(FieldForm form) {
        super(form, ModelPackage.Literals.SOURCED__SOURCE, SWT.SINGLE | SWT.BORDER, 1);
        meaning = new MeaningLabel(form, textControl(), true);
        placeProblems();
        Assist.replacing(textControl(), (contents, position) -> proposals(contents.substring(0, position)),
                this::commitDraft);
        page = form.text(ModelPackage.Literals.SOURCED__PAGE);
    }

    /** Returns the field for the page. */
    public TextField page() {
        return page;
    }

    private Stream<Source> sources() {
        return form().session().document().map(Document::getSources).map(List::copyOf).orElse(List.of()).stream()
                .filter(source -> source.getId() != null);
    }

    private Optional<Source> find(String id) {
        return sources().filter(source -> id.equals(source.getId())).findFirst();
    }

    @Override
    Reading read(String typed) {
        String id = typed.strip();
        return find(id).isPresent() ? Reading.of(id) : Reading.unreadable(new InputProblem(Severity.ERROR,
                "expected the id of a source of this document" + known(), typed, 0, typed.length()));
    }

    private String known() {
        String ids = sources().map(Source::getId).limit(4).collect(Collectors.joining(", "));
        return ids.isEmpty() ? ", which has none yet" : ", such as " + ids;
    }

    @Override
    String text(Object value) {
        return value.toString();
    }

    @Override
    void showMeaning(Object value) {
        meaning.show(value == null ? "" : find(value.toString()).map(SourceField::title).orElse(""));
    }

    private static String title(Source source) {
        return source.getTitle() == null ? "" : source.getTitle();
    }

    private IContentProposal[] proposals(String typed) {
        boolean chosen = find(typed.strip()).isPresent();
        String wanted = chosen ? "" : typed.strip().toLowerCase(Locale.ROOT);
        return sources().filter(source -> words(source).toLowerCase(Locale.ROOT).contains(wanted))
                .map(source -> new ContentProposal(source.getId(), words(source), null))
                .toArray(IContentProposal[]::new);
    }

    private static String words(Source source) {
        return title(source).isEmpty() ? source.getId() : source.getId() + "  \u2013  " + title(source);
    }
}
