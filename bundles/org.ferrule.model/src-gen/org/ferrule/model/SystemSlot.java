/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>System Slot</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * The places of the system in which something can lie.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelPackage#getSystemSlot()
 * @model
 * @generated
 */
public enum SystemSlot implements Enumerator
{
	/**
	 * The '<em><b>Guide</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GUIDE_VALUE
	 * @generated
	 * @ordered
	 */
	GUIDE(0, "guide", "guide"),

	/**
	 * The '<em><b>Extension</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EXTENSION_VALUE
	 * @generated
	 * @ordered
	 */
	EXTENSION(1, "extension", "extension"),

	/**
	 * The '<em><b>Main Wire</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MAIN_WIRE_VALUE
	 * @generated
	 * @ordered
	 */
	MAIN_WIRE(2, "mainWire", "main wire"),

	/**
	 * The '<em><b>Second Wire</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SECOND_WIRE_VALUE
	 * @generated
	 * @ordered
	 */
	SECOND_WIRE(3, "secondWire", "second wire"),

	/**
	 * The '<em><b>Anchor</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ANCHOR_VALUE
	 * @generated
	 * @ordered
	 */
	ANCHOR(4, "anchor", "anchor"),

	/**
	 * The '<em><b>Microcatheter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MICROCATHETER_VALUE
	 * @generated
	 * @ordered
	 */
	MICROCATHETER(5, "microcatheter", "microcatheter");

	/**
	 * The '<em><b>Guide</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GUIDE
	 * @model name="guide"
	 * @generated
	 * @ordered
	 */
	public static final int GUIDE_VALUE = 0;

	/**
	 * The '<em><b>Extension</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EXTENSION
	 * @model name="extension"
	 * @generated
	 * @ordered
	 */
	public static final int EXTENSION_VALUE = 1;

	/**
	 * The '<em><b>Main Wire</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MAIN_WIRE
	 * @model name="mainWire" literal="main wire"
	 * @generated
	 * @ordered
	 */
	public static final int MAIN_WIRE_VALUE = 2;

	/**
	 * The '<em><b>Second Wire</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SECOND_WIRE
	 * @model name="secondWire" literal="second wire"
	 * @generated
	 * @ordered
	 */
	public static final int SECOND_WIRE_VALUE = 3;

	/**
	 * The '<em><b>Anchor</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ANCHOR
	 * @model name="anchor"
	 * @generated
	 * @ordered
	 */
	public static final int ANCHOR_VALUE = 4;

	/**
	 * The '<em><b>Microcatheter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MICROCATHETER
	 * @model name="microcatheter"
	 * @generated
	 * @ordered
	 */
	public static final int MICROCATHETER_VALUE = 5;

	/**
	 * An array of all the '<em><b>System Slot</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final SystemSlot[] VALUES_ARRAY =
		new SystemSlot[]
		{
			GUIDE,
			EXTENSION,
			MAIN_WIRE,
			SECOND_WIRE,
			ANCHOR,
			MICROCATHETER,
		};

	/**
	 * A public read-only list of all the '<em><b>System Slot</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<SystemSlot> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>System Slot</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SystemSlot get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			SystemSlot result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>System Slot</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SystemSlot getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			SystemSlot result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>System Slot</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SystemSlot get(int value)
	{
		switch (value)
		{
			case GUIDE_VALUE: return GUIDE;
			case EXTENSION_VALUE: return EXTENSION;
			case MAIN_WIRE_VALUE: return MAIN_WIRE;
			case SECOND_WIRE_VALUE: return SECOND_WIRE;
			case ANCHOR_VALUE: return ANCHOR;
			case MICROCATHETER_VALUE: return MICROCATHETER;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private SystemSlot(int value, String name, String literal)
	{
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue()
	{
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName()
	{
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral()
	{
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		return literal;
	}

} //SystemSlot
