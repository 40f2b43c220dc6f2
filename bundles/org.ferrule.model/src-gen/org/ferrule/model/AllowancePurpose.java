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
 * A representation of the literals of the enumeration '<em><b>Allowance Purpose</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a length is allowed for.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelPackage#getAllowancePurpose()
 * @model
 * @generated
 */
public enum AllowancePurpose implements Enumerator
{
	/**
	 * The '<em><b>Hub And Valve</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HUB_AND_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	HUB_AND_VALVE(0, "hubAndValve", "hub and valve"),

	/**
	 * The '<em><b>Extension Overlap</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EXTENSION_OVERLAP_VALUE
	 * @generated
	 * @ordered
	 */
	EXTENSION_OVERLAP(1, "extensionOverlap", "extension overlap"),

	/**
	 * The '<em><b>Grip</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GRIP_VALUE
	 * @generated
	 * @ordered
	 */
	GRIP(2, "grip", "grip");

	/**
	 * The '<em><b>Hub And Valve</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HUB_AND_VALVE
	 * @model name="hubAndValve" literal="hub and valve"
	 * @generated
	 * @ordered
	 */
	public static final int HUB_AND_VALVE_VALUE = 0;

	/**
	 * The '<em><b>Extension Overlap</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EXTENSION_OVERLAP
	 * @model name="extensionOverlap" literal="extension overlap"
	 * @generated
	 * @ordered
	 */
	public static final int EXTENSION_OVERLAP_VALUE = 1;

	/**
	 * The '<em><b>Grip</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GRIP
	 * @model name="grip"
	 * @generated
	 * @ordered
	 */
	public static final int GRIP_VALUE = 2;

	/**
	 * An array of all the '<em><b>Allowance Purpose</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final AllowancePurpose[] VALUES_ARRAY =
		new AllowancePurpose[]
		{
			HUB_AND_VALVE,
			EXTENSION_OVERLAP,
			GRIP,
		};

	/**
	 * A public read-only list of all the '<em><b>Allowance Purpose</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<AllowancePurpose> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Allowance Purpose</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static AllowancePurpose get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			AllowancePurpose result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Allowance Purpose</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static AllowancePurpose getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			AllowancePurpose result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Allowance Purpose</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static AllowancePurpose get(int value)
	{
		switch (value)
		{
			case HUB_AND_VALVE_VALUE: return HUB_AND_VALVE;
			case EXTENSION_OVERLAP_VALUE: return EXTENSION_OVERLAP;
			case GRIP_VALUE: return GRIP;
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
	private AllowancePurpose(int value, String name, String literal)
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

} //AllowancePurpose
