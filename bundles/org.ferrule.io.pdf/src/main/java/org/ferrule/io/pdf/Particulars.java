/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import java.util.Calendar;
import java.util.GregorianCalendar;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.ferrule.picture.Document;
import org.ferrule.picture.DocumentInfo;

/** What a PDF file tells about itself: title, language, time, bookmarks. */
final class Particulars {

    private static final String PROGRAM = "Ferrule";

    private final Document document;

    Particulars(Document document) {
        this.document = document;
    }

    /** Adds them to a file that has its pages already. */
    void addTo(PDDocument pdf) {
        pdf.setDocumentInformation(information());
        PDDocumentCatalog catalog = pdf.getDocumentCatalog();
        catalog.setLanguage(document.info().language());
        PDViewerPreferences preferences = new PDViewerPreferences(catalog.getCOSObject());
        preferences.setDisplayDocTitle(true);
        catalog.setViewerPreferences(preferences);
        if (document.pages().size() > 1) {
            catalog.setDocumentOutline(bookmarks(pdf));
        }
    }

    private PDDocumentInformation information() {
        DocumentInfo info = document.info();
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(info.title());
        information.setAuthor(emptyToNull(info.author()));
        information.setSubject(emptyToNull(info.subject()));
        information.setKeywords(emptyToNull(String.join(", ", info.keywords())));
        information.setCreator(PROGRAM);
        information.setProducer(PROGRAM);
        Calendar created = GregorianCalendar.from(info.created().toZonedDateTime());
        information.setCreationDate(created);
        information.setModificationDate(created);
        return information;
    }

    private PDDocumentOutline bookmarks(PDDocument pdf) {
        PDDocumentOutline outline = new PDDocumentOutline();
        for (int i = 0; i < document.pages().size(); i++) {
            String title = document.pages().get(i).title();
            PDPageFitDestination destination = new PDPageFitDestination();
            destination.setPage(pdf.getPage(i));
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(title.isEmpty() ? String.valueOf(i + 1) : title);
            item.setDestination(destination);
            outline.addLast(item);
        }
        return outline;
    }

    /** The library leaves an entry out where it is told nothing. */
    private static String emptyToNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
