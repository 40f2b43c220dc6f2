/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.ferrule.shelf.sheet.SheetException;
import org.ferrule.shelf.sheet.SheetFault;
import org.ferrule.shelf.sheet.ReadShelf;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;
import org.junit.jupiter.api.Test;

class ShelfSheetTest {
    private static final Set<String> ALL = Set.of("item", "name", "device", "di", "lot", "serial", "expiry",
            "quantity", "location", "par level", "price");
    private static final Shelf SHELF = new Shelf(List.of(
            new Item("b-20", Optional.of("balloons.devices.json#b-20"), Optional.of("06291041500213"), List.of(
                    new Lot("00012", Optional.of(LocalDate.of(2027, 3, 31)), 3, "cabinet 2, left", Optional.empty()),
                    new Lot("=A", Optional.empty(), 1, "", Optional.of("+7"))), 2, Optional.of(new BigDecimal("120.5")),
                    "Balloon \"2.0\"; short"),
            new Item("w", Optional.empty(), Optional.empty(), List.of(), 0, Optional.empty(), "'wire'")));

    private static byte[] xlsx(Shelf shelf) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ShelfXlsx.write(shelf, out);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return out.toByteArray();
    }

    private static ReadShelf xlsx(byte[] bytes) throws SheetException {
        try {
            return ShelfXlsx.read(new ByteArrayInputStream(bytes));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<SheetFault> faults(String csv) {
        return assertThrows(SheetException.class, () -> ShelfCsv.read(csv.replace('|', '\n'))).faults();
    }

    private static void assertFault(String fault, String csv) {
        assertEquals(List.of(fault), faults(csv).stream().map(SheetFault::toString).toList());
    }

    @Test
    void csvIsReadBackAsTheSameShelf() throws SheetException {
        assertEquals(new ReadShelf(SHELF, ALL, List.of()), ShelfCsv.read(ShelfCsv.write(SHELF)));
        assertEquals(new Shelf(List.of()), ShelfCsv.read(ShelfCsv.write(new Shelf(List.of()))).shelf());
    }

    @Test
    void xlsxIsReadBackAsTheSameShelf() throws SheetException {
        assertEquals(new ReadShelf(SHELF, ALL, List.of()), xlsx(xlsx(SHELF)));
        assertEquals(new Shelf(List.of()), xlsx(xlsx(new Shelf(List.of()))).shelf());
    }

    @Test
    void randomShelvesAreReadBack() throws SheetException {
        Random random = new Random(Long.getLong("QT_SEED", 0));
        for (int i = 0; i < 30; i++) {
            Shelf shelf = random(random);
            assertEquals(shelf, ShelfCsv.read(ShelfCsv.write(shelf)).shelf());
            assertEquals(shelf, xlsx(xlsx(shelf)).shelf());
        }
    }

    private static Shelf random(Random random) {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < random.nextInt(5); i++) {
            List<Lot> lots = new ArrayList<>();
            for (int lot = 0; lot < random.nextInt(4); lot++) {
                lots.add(new Lot(text(random) + lot, random.nextBoolean() ? Optional.empty()
                        : Optional.of(LocalDate.of(2020, 1, 1).plusDays(random.nextInt(9999))), 1 + random.nextInt(9),
                        text(random), Optional.empty()));
            }
            items.add(new Item(text(random) + i, Optional.of(text(random) + "d"), Optional.of("D" + i), lots,
                    random.nextInt(5), Optional.of(BigDecimal.valueOf(1 + 10L * random.nextInt(99_999), 2)),
                    text(random)));
        }
        return new Shelf(items);
    }

    /** Texts with all that CSV and spreadsheets give a meaning of their own, without blanks at their ends. */
    private static String text(Random random) {
        StringBuilder text = new StringBuilder();
        String characters = "ab'\"=+-@,;<&>01ä\u00b5.";
        for (int i = 0; i < random.nextInt(6); i++) {
            text.append(characters.charAt(random.nextInt(characters.length())));
        }
        return text.toString();
    }

    @Test
    void csvHoldsNothingThatASpreadsheetTakesForAFormula() {
        assertEquals("item,name,device,di,lot,serial,expiry,quantity,location,par level,price\r\n"
                + "b-20,\"Balloon \"\"2.0\"\"; short\",balloons.devices.json#b-20,06291041500213,00012,,2027-03-31,3,"
                + "\"cabinet 2, left\",2,120.5\r\n"
                + "b-20,\"Balloon \"\"2.0\"\"; short\",balloons.devices.json#b-20,06291041500213,'=A,'+7,,1,,2,120.5\r\n"
                + "w,''wire',,,,,,0,,0,\r\n", ShelfCsv.write(SHELF));
    }

    @Test
    void readsColumnsInAnyOrderAndTellsUnknownOnes() throws SheetException {
        ReadShelf read = ShelfCsv.read("\ufeffcolour;Quantity; ITEM ;lot\nred;2;b;A\n;;;\n;1;b;B\n");
        assertEquals(List.of("colour"), read.unknownColumns());
        assertEquals(3, read.shelf().item("b").orElseThrow().quantity());
    }

    @Test
    void laterRowsOfAnItemMayLeaveOutWhatTheFirstSays() throws SheetException {
        Item item = ShelfCsv.read("item,name,lot,quantity,par level,price\nb,Balloon,A,1,2,3.50\nb,,B,1,,\n").shelf()
                .item("b").orElseThrow();
        assertEquals("Balloon 2 3.50 2", item.name() + " " + item.parLevel() + " " + item.price().orElseThrow() + " "
                + item.lots().size());
    }

    @Test
    void saysRowAndColumnOfWhatCannotBeRead() {
        assertFault("row 1: \"\", expected headings: " + ShelfWriter.headings(), "");
        assertFault("row 1: \"lot, quantity\", expected a column \"item\"", "lot,quantity|A,1");
        assertFault("row 1, column \"lot\": \"lot\", expected this heading once only", "item,lot,lot|b,A,B");
        assertFault("row 3, column \"item\": \"\", expected the id of an item", "item,lot|b,|,A");
        assertFault("row 2, column \"quantity\": \"\", expected a number of units", "item,lot,quantity|b,A,");
        assertFault("row 2, column \"quantity\": \"\", expected a number of units",
                "item,expiry,quantity|b,2027-01-01,");
        assertFault("row 2, column \"quantity\": \"-1\", expected a whole number, zero or more",
                "item,lot,quantity|b,A,-1");
        assertFault("row 2, column \"quantity\": \"2\", expected 1 with a serial number",
                "item,lot,quantity,serial|b,A,2,7");
        assertFault("row 2, column \"expiry\": \"31.3.2027\", expected a date such as 2027-03-31",
                "item,lot,quantity,expiry|b,A,2,31.3.2027");
        assertFault("row 4, column \"name\": \"C\", expected \"B\" as in row 2", "item,name|b,B|b,|b,C");
        assertFault("row 2, column \"par level\": \"x\", expected a whole number, zero or more", "item,par level|b,x");
        assertFault("row 2, column \"price\": \"1e3\", expected a price such as 120.50", "item,price|b,1e3");
        assertFault("row 1, column \"di\": \"two items with the device identifier 1\", expected each device identifier "
                + "once", "item,di|b,1|c,1");
        assertFault("row 2: \"item \"b\" has twice lot \"A\"\", expected lots that do not contradict each other",
                "item,lot,quantity|b,A,1|b,A,2");
    }

    @Test
    void tellsAllFaultsAtOnce() {
        assertEquals(3, faults("item,quantity,expiry,price|b,x,,1|c,1,y,2|d,1,,z").size());
    }

    @Test
    void brokenCsvIsTold() {
        assertEquals("CSV", faults("item,lot|b,\"A").get(0).expected());
    }

    @Test
    void whatIsNoXlsxIsTold() {
        SheetException e = assertThrows(SheetException.class, () -> xlsx("item,lot".getBytes(StandardCharsets.UTF_8)));
        assertEquals("an XLSX file", e.faults().get(0).expected());
    }

    @Test
    void readsNumbersInColumnsOfTexts() throws IOException, SheetException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "Test", null)) {
            Worksheet sheet = workbook.newWorksheet("any");
            List<String> headings = List.of("item", "di", "lot", "quantity", "expiry", "sum");
            for (int i = 0; i < headings.size(); i++) {
                sheet.value(1, i, headings.get(i));
            }
            sheet.value(2, 0, "b");
            sheet.value(2, 1, 6291041500213L);
            sheet.value(2, 2, 42);
            sheet.value(2, 3, "2");
            sheet.value(2, 4, "2027-03-31");
            sheet.formula(2, 5, "1+1");
        }
        ReadShelf read = xlsx(out.toByteArray());
        assertEquals(List.of("sum"), read.unknownColumns());
        Item item = read.shelf().itemOfDi("06291041500213").orElseThrow();
        assertEquals(List.of(new Lot("42", Optional.of(LocalDate.of(2027, 3, 31)), 2, "", Optional.empty())),
                item.lots());
    }

    @Test
    void refusesFormulas() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "Test", null)) {
            Worksheet sheet = workbook.newWorksheet("any");
            sheet.value(0, 0, "item");
            sheet.value(0, 1, "quantity");
            sheet.value(1, 0, "b");
            sheet.formula(1, 1, "1+1");
        }
        SheetFault fault = assertThrows(SheetException.class, () -> xlsx(out.toByteArray())).faults().get(0);
        assertEquals(2, fault.row());
        assertEquals("quantity", fault.column());
        assertTrue(fault.expected().contains("formula"));
    }
}
