/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** A button that opens a menu, which is filled each time. */
final class MenuButton {

    private static final String SIGN = " \u25be";

    private final Button button;
    private final Consumer<MenuButton> filler;
    private Menu menu;

    MenuButton(Composite parent, String title, String explanation, Consumer<MenuButton> filler) {
        this.filler = filler;
        button = new Button(parent, SWT.PUSH);
        button.setToolTipText(explanation);
        say(title);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> open()));
        button.addListener(SWT.Dispose, event -> close());
    }

    /** Shows another text on the button; tells whether it is another one. */
    boolean say(String title) {
        String text = title.replace("&", "&&") + SIGN;
        boolean other = !text.equals(button.getText());
        if (other) {
            button.setText(text);
        }
        return other;
    }

    private void open() {
        close();
        menu = new Menu(button);
        filler.accept(this);
        Point below = button.toDisplay(0, button.getSize().y);
        menu.setLocation(below);
        menu.setVisible(true);
    }

    private void close() {
        if (menu != null) {
            menu.dispose();
        }
    }

    void radio(String text, boolean chosen, Runnable action) {
        item(SWT.RADIO, text, chosen, action);
    }

    void check(String text, boolean chosen, Runnable action) {
        item(SWT.CHECK, text, chosen, action);
    }

    void push(String text, Runnable action) {
        item(SWT.PUSH, text, false, action);
    }

    void separator() {
        new MenuItem(menu, SWT.SEPARATOR);
    }

    private void item(int style, String text, boolean chosen, Runnable action) {
        MenuItem item = new MenuItem(menu, style);
        item.setText(text.replace("&", "&&"));
        item.setSelection(chosen);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            if (style != SWT.RADIO || item.getSelection()) {
                action.run();
            }
        }));
    }

    Button control() {
        return button;
    }
}
