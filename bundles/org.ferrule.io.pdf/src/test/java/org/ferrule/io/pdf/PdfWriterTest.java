/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.ferrule.io.fonts.FontFiles;
import org.ferrule.io.fonts.MissingGlyphException;
import org.ferrule.picture.Document;
import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.FontFace;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextStyle;
import org.ferrule.picture.contract.SamplePictures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PdfWriterTest {

    private static final DocumentInfo INFO = DocumentInfo.of("Fit chart",
            OffsetDateTime.parse("2026-03-04T05:06:07+01:00"));

    @Test
    void textIsReadBackAsLines() throws IOException {
        String text = "Guide catheter ⌀ 1.78 mm ±0.03 ≥ 0.070 in\nofficial configuration — fluffy\n6 Fr × 2 → ✓";
        Picture picture = picture(p -> p.lines(10, 20, 5, text.lines().toList()));
        try (PDDocument pdf = written(new Document(INFO, List.of(picture)))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setLineSeparator("\n");
            assertEquals(text, stripper.getText(pdf).strip());
        }
    }

    /** A4 is 210 mm x 297 mm and A3 twice that (ISO 216); a unit of a page is 1/72 inch (ISO 32000-1, 8.3.2.3). */
    @Test
    void pagesKeepTheirOrderAndSize() throws IOException {
        Document document = new Document(INFO, List.of(
                new PictureBuilder().text(5, 5, "first").picture(210, 297, "One"),
                new PictureBuilder().text(5, 5, "second").picture(420, 297, "")));
        try (PDDocument pdf = written(document)) {
            assertEquals(2, pdf.getNumberOfPages());
            assertEquals(595.276, pdf.getPage(0).getMediaBox().getWidth(), 0.001);
            assertEquals(1190.551, pdf.getPage(1).getMediaBox().getWidth(), 0.001);
            assertEquals("firstsecond", Letters.inOrderOfPainting(pdf));
        }
    }

    @Test
    void pagesHaveBookmarksOfTheirTitlesOrNumbers() throws IOException {
        Document document = new Document(INFO, List.of(
                new PictureBuilder().picture(210, 297, "Größen"), new PictureBuilder().picture(210, 297, "")));
        try (PDDocument pdf = written(document)) {
            List<PDOutlineItem> items = new ArrayList<>();
            pdf.getDocumentCatalog().getDocumentOutline().children().forEach(items::add);
            assertEquals(List.of("Größen", "2"), items.stream().map(PDOutlineItem::getTitle).toList());
            assertEquals(pdf.getPage(1), items.get(1).findDestinationPage(pdf));
        }
    }

    @Test
    void singlePageNeedsNoBookmarks() throws IOException {
        try (PDDocument pdf = written(new Document(INFO, List.of(SamplePictures.blank())))) {
            assertNull(pdf.getDocumentCatalog().getDocumentOutline());
        }
    }

    @Test
    void tellsWhatIsToBeKnown() throws IOException {
        DocumentInfo info = INFO.by("Laboratory of Nowhere").about("Sizes ≥ 6 Fr").withKeywords("guide", "wire")
                .in("en-GB");
        try (PDDocument pdf = written(new Document(info, List.of(SamplePictures.blank())))) {
            PDDocumentInformation told = pdf.getDocumentInformation();
            assertEquals("Fit chart", told.getTitle());
            assertEquals("Laboratory of Nowhere", told.getAuthor());
            assertEquals("Sizes ≥ 6 Fr", told.getSubject());
            assertEquals("guide, wire", told.getKeywords());
            assertEquals(info.created().toInstant(), told.getCreationDate().toInstant());
            assertEquals("D:20260304050607+01'00'", told.getCOSObject().getString(COSName.CREATION_DATE));
            PDDocumentCatalog catalog = pdf.getDocumentCatalog();
            assertEquals("en-GB", catalog.getLanguage());
            assertTrue(catalog.getViewerPreferences().displayDocTitle());
        }
    }

    @Test
    void leavesOutWhatIsNotSaid() throws IOException {
        try (PDDocument pdf = written(new Document(INFO, List.of(SamplePictures.blank())))) {
            assertNull(pdf.getDocumentInformation().getAuthor());
            assertNull(pdf.getDocumentInformation().getKeywords());
        }
    }

    @ParameterizedTest
    @EnumSource
    void embedsOnlyTheCharactersUsedOfOnlyTheFacesUsed(FontFace face) throws IOException {
        Picture picture = picture(p -> p.lettering(TextStyle.ofPt(9).in(face)).text(5, 5, "6 Fr"));
        byte[] bytes = bytes(new Document(INFO, List.of(picture)));
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            List<PDFont> fonts = fonts(pdf);
            assertEquals(1, fonts.size());
            assertTrue(fonts.get(0).isEmbedded());
            assertTrue(fonts.get(0).getName().matches("[A-Z]{6}\\+" + FontFiles.name(face).replace(" ", "")
                    .replaceFirst("(Bold)?$", face.isBold() ? "-Bold" : "")), fonts.get(0).getName());
        }
        assertTrue(bytes.length < 20_000, "The whole font seems to be inside: " + bytes.length + " bytes");
    }

    @Test
    void sameDocumentHasTheSameIdentityAndAnotherOneAnother() throws IOException {
        COSArray first = identity(picture(p -> p.circle(5, 5, 3)));
        assertEquals(first.toString(), identity(picture(p -> p.circle(5, 5, 3))).toString());
        assertNotEquals(first.toString(), identity(picture(p -> p.circle(5, 5, 4))).toString());
    }

    @ParameterizedTest
    @EnumSource
    void namesTheCharacterThatTheFontLacksAndWritesNothing(FontFace face) {
        Picture picture = picture(p -> p.lettering(TextStyle.ofPt(9).in(face)).text(5, 5, "Guide 中 wire"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        MissingGlyphException thrown = assertThrows(MissingGlyphException.class,
                () -> new PdfWriter().write(new Document(INFO, List.of(picture)), out));
        assertEquals("The character \"中\" (U+4E2D, CJK UNIFIED IDEOGRAPHS 4E2D) in the text \"Guide 中 wire\" "
                + "is not in the font " + FontFiles.name(face), thrown.getMessage());
        assertEquals(0x4E2D, thrown.codePoint());
        assertEquals(0, out.size());
    }

    @Test
    void namesACharacterBeyondTheBasicPlane() {
        Picture picture = picture(p -> p.text(5, 5, "a\uD83E\uDEC0"));
        MissingGlyphException thrown = assertThrows(MissingGlyphException.class,
                () -> bytes(new Document(INFO, List.of(picture))));
        assertTrue(thrown.getMessage().contains("U+1FAC0"), thrown.getMessage());
    }

    @Test
    void namesAnUnassignedCharacterByItsNumber() {
        Picture picture = picture(p -> p.text(5, 5, "\u0378"));
        MissingGlyphException thrown = assertThrows(MissingGlyphException.class,
                () -> bytes(new Document(INFO, List.of(picture))));
        assertTrue(thrown.getMessage().contains("(U+0378, unassigned)"), thrown.getMessage());
    }

    private static Picture picture(Consumer<PictureBuilder> content) {
        PictureBuilder builder = new PictureBuilder();
        content.accept(builder);
        return builder.picture(100, 60, "Example");
    }

    private static COSArray identity(Picture picture) throws IOException {
        try (PDDocument pdf = written(new Document(INFO, List.of(picture)))) {
            return pdf.getDocument().getDocumentID();
        }
    }

    private static List<PDFont> fonts(PDDocument pdf) throws IOException {
        List<PDFont> fonts = new ArrayList<>();
        for (COSName name : pdf.getPage(0).getResources().getFontNames()) {
            fonts.add(pdf.getPage(0).getResources().getFont(name));
        }
        return fonts;
    }

    private static PDDocument written(Document document) throws IOException {
        return Loader.loadPDF(bytes(document));
    }

    private static byte[] bytes(Document document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfWriter().write(document, out);
        return out.toByteArray();
    }
}
