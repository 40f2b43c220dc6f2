/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import static org.ferrule.shelf.code.CodeTests.TODAY;
import static org.ferrule.shelf.code.CodeTests.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.zxing.DecodeHintType;
import com.google.zxing.ReaderException;
import com.google.zxing.datamatrix.DataMatrixReader;
import com.google.zxing.oned.Code128Reader;
import com.google.zxing.qrcode.QRCodeReader;

/** Random codes are drawn by an encoder, and by a reader of images, that have nothing to do with this project. */
class ZintTest {
    private static final int CODES = 60;
    /** Most data characters of a GS1-128 symbol (GS1 General Specifications, section 5.4). */
    private static final int LINEAR = 48;
    private static final Map<DecodeHintType, ?> PURE = Map.of(DecodeHintType.PURE_BARCODE, true);

    private final Random random = new Random(Long.getLong("QT_SEED", 0));

    @TempDir
    private Path folder;

    private List<RandomGs1> gs1(int elements, int most) {
        return Stream.generate(() -> RandomGs1.draw(random, elements, most)).filter(code -> !code.bracketed().isEmpty())
                .limit(CODES).toList();
    }

    private static void assertRead(List<RandomGs1> drawn, List<String> texts) {
        assertEquals(drawn.size(), texts.size());
        for (int i = 0; i < drawn.size(); i++) {
            assertEquals(drawn.get(i).code(), read(texts.get(i)), texts.get(i));
        }
    }

    @Test
    void readsWhatIsPrintedUnderGs1Symbols() throws IOException {
        List<RandomGs1> drawn = gs1(5, LINEAR);
        assertRead(drawn, new Zint(folder).printed(bracketed(drawn), "-b", "GS1_128"));
    }

    @Test
    void readsWhatIsScannedFromGs1DataMatrix() throws IOException, ReaderException {
        List<RandomGs1> drawn = gs1(12, 200);
        assertRead(drawn, new Zint(folder).scanned(bracketed(drawn), new DataMatrixReader(), PURE, "-b", "DATAMATRIX",
                "--gs1"));
    }

    @Test
    void readsWhatIsScannedFromGs1QrCode() throws IOException, ReaderException {
        List<RandomGs1> drawn = gs1(12, 200);
        assertRead(drawn,
                new Zint(folder).scanned(bracketed(drawn), new QRCodeReader(), PURE, "-b", "QRCODE", "--gs1"));
    }

    @Test
    void readsWhatIsScannedFromGs1128() throws IOException, ReaderException {
        List<RandomGs1> drawn = gs1(5, LINEAR);
        List<String> texts = new Zint(folder).scanned(bracketed(drawn), new Code128Reader(),
                Map.of(DecodeHintType.ASSUME_GS1, true), "-b", "GS1_128", "--quietzones");
        assertEquals(List.of("]C1"), texts.stream().map(text -> text.substring(0, 3)).distinct().toList());
        assertRead(drawn, texts);
    }

    private static List<String> bracketed(List<RandomGs1> drawn) {
        return drawn.stream().map(RandomGs1::bracketed).toList();
    }

    @Test
    void refusesTheCheckDigitsThatTheEncoderRefuses() throws IOException {
        List<String> gtins = new ArrayList<>();
        for (int i = 0; i < CODES; i++) {
            String digits = String.format("%013d", random.nextLong(10_000_000_000_000L));
            for (int check = 0; check < 10; check++) {
                gtins.add(digits + check);
            }
        }
        List<Integer> refused = new Zint(folder).refused(gtins.stream().map(gtin -> "[01]" + gtin).toList(), "-b",
                "GS1_128");
        assertEquals(9 * CODES, refused.size());
        for (int i = 0; i < gtins.size(); i++) {
            String text = "(01)" + gtins.get(i);
            if (refused.contains(i)) {
                assertEquals(CodeFault.CHECK, assertThrows(CodeException.class, () -> CodeReader.read(text, TODAY))
                        .fault());
            } else {
                assertEquals(gtins.get(i), read(text).di().orElseThrow());
            }
        }
    }

    @Test
    void readsHibcCodesWithTheCheckCharacterOfTheEncoder() throws IOException {
        List<RandomHibc> drawn = hibc(7);
        assertReadHibc(drawn, new Zint(folder).printed(data(drawn), "-b", "HIBC_128"));
    }

    @Test
    void readsWhatIsScannedFromHibcDataMatrix() throws IOException, ReaderException {
        List<RandomHibc> drawn = hibc(18);
        assertReadHibc(drawn, new Zint(folder).scanned(data(drawn), new DataMatrixReader(), PURE, "-b", "HIBC_DM"));
    }

    private List<RandomHibc> hibc(int longest) {
        return Stream.generate(() -> RandomHibc.draw(random, longest)).limit(CODES).toList();
    }

    private static List<String> data(List<RandomHibc> drawn) {
        return drawn.stream().map(RandomHibc::data).toList();
    }

    private static void assertReadHibc(List<RandomHibc> drawn, List<String> texts) {
        assertEquals(drawn.size(), texts.size());
        for (int i = 0; i < drawn.size(); i++) {
            assertEquals(drawn.get(i).code(), read(texts.get(i)), texts.get(i));
        }
    }

    @Test
    void primaryAndSecondaryHibcCodesOfTheEncoderBelongTogether() throws IOException {
        List<String> primaries = Stream.generate(() -> "Q" + RandomHibc.text(3 + 1 + random.nextInt(18), random) + "0")
                .limit(CODES).toList();
        List<ProductCode> codes = new Zint(folder).printed(primaries, "-b", "HIBC_39").stream().map(CodeTests::read)
                .toList();
        List<String> secondaries = codes.stream().map(code -> "$$0328L0T" + code.link().orElseThrow()).toList();
        List<String> printed = new Zint(folder).printed(secondaries, "-b", "HIBC_39");
        for (int i = 0; i < CODES; i++) {
            ProductCode secondary = read(printed.get(i));
            assertEquals("L0T", secondary.lot().orElseThrow());
            assertEquals(codes.get(i).link(), secondary.link());
        }
    }
}
