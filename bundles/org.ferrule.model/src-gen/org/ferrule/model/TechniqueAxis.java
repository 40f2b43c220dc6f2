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
 * A representation of the literals of the enumeration '<em><b>Technique Axis</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a technique does about the lesion.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelPackage#getTechniqueAxis()
 * @model
 * @generated
 */
public enum TechniqueAxis implements Enumerator
{
	/**
	 * The '<em><b>Look First</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LOOK_FIRST_VALUE
	 * @generated
	 * @ordered
	 */
	LOOK_FIRST(0, "lookFirst", "look first"),

	/**
	 * The '<em><b>Modify The Lesion</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MODIFY_THE_LESION_VALUE
	 * @generated
	 * @ordered
	 */
	MODIFY_THE_LESION(1, "modifyTheLesion", "modify the lesion"),

	/**
	 * The '<em><b>Add Support</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ADD_SUPPORT_VALUE
	 * @generated
	 * @ordered
	 */
	ADD_SUPPORT(2, "addSupport", "add support"),

	/**
	 * The '<em><b>Lower The Profile</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LOWER_THE_PROFILE_VALUE
	 * @generated
	 * @ordered
	 */
	LOWER_THE_PROFILE(3, "lowerTheProfile", "lower the profile"),

	/**
	 * The '<em><b>Leave The Plaque</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LEAVE_THE_PLAQUE_VALUE
	 * @generated
	 * @ordered
	 */
	LEAVE_THE_PLAQUE(4, "leaveThePlaque", "leave the plaque");

	/**
	 * The '<em><b>Look First</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LOOK_FIRST
	 * @model name="lookFirst" literal="look first"
	 * @generated
	 * @ordered
	 */
	public static final int LOOK_FIRST_VALUE = 0;

	/**
	 * The '<em><b>Modify The Lesion</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MODIFY_THE_LESION
	 * @model name="modifyTheLesion" literal="modify the lesion"
	 * @generated
	 * @ordered
	 */
	public static final int MODIFY_THE_LESION_VALUE = 1;

	/**
	 * The '<em><b>Add Support</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ADD_SUPPORT
	 * @model name="addSupport" literal="add support"
	 * @generated
	 * @ordered
	 */
	public static final int ADD_SUPPORT_VALUE = 2;

	/**
	 * The '<em><b>Lower The Profile</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LOWER_THE_PROFILE
	 * @model name="lowerTheProfile" literal="lower the profile"
	 * @generated
	 * @ordered
	 */
	public static final int LOWER_THE_PROFILE_VALUE = 3;

	/**
	 * The '<em><b>Leave The Plaque</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LEAVE_THE_PLAQUE
	 * @model name="leaveThePlaque" literal="leave the plaque"
	 * @generated
	 * @ordered
	 */
	public static final int LEAVE_THE_PLAQUE_VALUE = 4;

	/**
	 * An array of all the '<em><b>Technique Axis</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final TechniqueAxis[] VALUES_ARRAY =
		new TechniqueAxis[]
		{
			LOOK_FIRST,
			MODIFY_THE_LESION,
			ADD_SUPPORT,
			LOWER_THE_PROFILE,
			LEAVE_THE_PLAQUE,
		};

	/**
	 * A public read-only list of all the '<em><b>Technique Axis</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<TechniqueAxis> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Technique Axis</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TechniqueAxis get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			TechniqueAxis result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Technique Axis</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TechniqueAxis getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			TechniqueAxis result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Technique Axis</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TechniqueAxis get(int value)
	{
		switch (value)
		{
			case LOOK_FIRST_VALUE: return LOOK_FIRST;
			case MODIFY_THE_LESION_VALUE: return MODIFY_THE_LESION;
			case ADD_SUPPORT_VALUE: return ADD_SUPPORT;
			case LOWER_THE_PROFILE_VALUE: return LOWER_THE_PROFILE;
			case LEAVE_THE_PLAQUE_VALUE: return LEAVE_THE_PLAQUE;
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
	private TechniqueAxis(int value, String name, String literal)
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

} //TechniqueAxis
