/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.help;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.ferrule.ui.internal.help.RichText.Kind;
import org.ferrule.ui.internal.help.RichText.Paragraph;
import org.ferrule.ui.internal.help.RichText.Run;
import org.ferrule.ui.look.Colours;

/** Shows a page in a text widget. */
final class PagePainter {

    private static final int INDENT = 22;
    private static final int SPACE_BELOW = 7;

    private final StyledText widget;
    private final List<StyleRange> links = new ArrayList<>();
    private final ShownPictures pictures;

    PagePainter(StyledText widget) {
        this.widget = widget;
        pictures = new ShownPictures(widget);
    }

    /** Replaces what the widget shows. */
    void paint(RichText page) {
        StringBuilder text = new StringBuilder();
        List<StyleRange> ranges = new ArrayList<>();
        links.clear();
        pictures.clear();
        for (Paragraph paragraph : page.paragraphs()) {
            append(paragraph, text, ranges);
            text.append('\n');
        }
        widget.setText(text.toString());
        ranges.forEach(widget::setStyleRange);
        for (int i = 0; i < page.paragraphs().size(); i++) {
            layOut(i, page.paragraphs().get(i));
        }
    }

    /** Returns where the link at the offset leads. */
    Optional<String> linkAt(int offset) {
        return links.stream().filter(link -> offset >= link.start && offset < link.start + link.length)
                .map(link -> (String) link.data).findFirst();
    }

    private void append(Paragraph paragraph, StringBuilder text, List<StyleRange> ranges) {
        StyleRange picture = paragraph.kind() == Kind.PICTURE
                ? pictures.draw(paragraph.runs().get(0).target(), text.length()) : null;
        if (picture != null) {
            ranges.add(picture);
            text.append(ShownPictures.PLACE);
            return;
        }
        text.append(switch (paragraph.kind()) {
            case BULLET -> "\u2022\u2002";
            case NUMBERED -> paragraph.number() + ".\u2002";
            default -> "";
        });
        for (Run run : paragraph.runs()) {
            ranges.add(range(text.length(), run, paragraph.kind()));
            text.append(run.text());
        }
    }

    private StyleRange range(int start, Run run, Kind kind) {
        StyleRange range = new StyleRange();
        range.start = start;
        range.length = run.text().length();
        switch (kind) {
            case TITLE -> range.font = JFaceResources.getHeaderFont();
            case HEADING -> range.font = JFaceResources.getBannerFont();
            default -> set(range, run);
        }
        return range;
    }

    private void set(StyleRange range, Run run) {
        switch (run.style()) {
            case STRONG -> range.fontStyle = SWT.BOLD;
            case EMPHASIS -> range.fontStyle = SWT.ITALIC;
            case CODE -> range.font = JFaceResources.getTextFont();
            case LINK -> link(range, run.target());
            case PLAIN -> range.fontStyle = SWT.NORMAL;
        }
    }

    private void link(StyleRange range, String target) {
        range.underline = true;
        range.foreground = Colours.link();
        range.data = target;
        links.add(range);
    }

    private void layOut(int line, Paragraph paragraph) {
        boolean item = paragraph.kind() == Kind.BULLET || paragraph.kind() == Kind.NUMBERED;
        widget.setLineIndent(line, 1, item ? INDENT - 14 : 0);
        widget.setLineWrapIndent(line, 1, item ? INDENT : 0);
        widget.setLineVerticalIndent(line, paragraph.kind() == Kind.HEADING ? SPACE_BELOW * 2
                : line == 0 ? 0 : SPACE_BELOW);
    }
}
