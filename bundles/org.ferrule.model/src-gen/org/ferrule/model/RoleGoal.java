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
 * A representation of the literals of the enumeration '<em><b>Role Goal</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * How far a device has to come.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelPackage#getRoleGoal()
 * @model
 * @generated
 */
public enum RoleGoal implements Enumerator
{
	/**
	 * The '<em><b>Lesion</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LESION_VALUE
	 * @generated
	 * @ordered
	 */
	LESION(0, "lesion", "lesion"),

	/**
	 * The '<em><b>Branch</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BRANCH_VALUE
	 * @generated
	 * @ordered
	 */
	BRANCH(1, "branch", "branch"),

	/**
	 * The '<em><b>Guide Tip</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GUIDE_TIP_VALUE
	 * @generated
	 * @ordered
	 */
	GUIDE_TIP(2, "guideTip", "guide tip"),

	/**
	 * The '<em><b>In Guide</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IN_GUIDE_VALUE
	 * @generated
	 * @ordered
	 */
	IN_GUIDE(3, "inGuide", "in guide");

	/**
	 * The '<em><b>Lesion</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LESION
	 * @model name="lesion"
	 * @generated
	 * @ordered
	 */
	public static final int LESION_VALUE = 0;

	/**
	 * The '<em><b>Branch</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BRANCH
	 * @model name="branch"
	 * @generated
	 * @ordered
	 */
	public static final int BRANCH_VALUE = 1;

	/**
	 * The '<em><b>Guide Tip</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GUIDE_TIP
	 * @model name="guideTip" literal="guide tip"
	 * @generated
	 * @ordered
	 */
	public static final int GUIDE_TIP_VALUE = 2;

	/**
	 * The '<em><b>In Guide</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IN_GUIDE
	 * @model name="inGuide" literal="in guide"
	 * @generated
	 * @ordered
	 */
	public static final int IN_GUIDE_VALUE = 3;

	/**
	 * An array of all the '<em><b>Role Goal</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final RoleGoal[] VALUES_ARRAY =
		new RoleGoal[]
		{
			LESION,
			BRANCH,
			GUIDE_TIP,
			IN_GUIDE,
		};

	/**
	 * A public read-only list of all the '<em><b>Role Goal</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<RoleGoal> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Role Goal</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RoleGoal get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			RoleGoal result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Role Goal</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RoleGoal getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			RoleGoal result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Role Goal</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RoleGoal get(int value)
	{
		switch (value)
		{
			case LESION_VALUE: return LESION;
			case BRANCH_VALUE: return BRANCH;
			case GUIDE_TIP_VALUE: return GUIDE_TIP;
			case IN_GUIDE_VALUE: return IN_GUIDE;
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
	private RoleGoal(int value, String name, String literal)
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

} //RoleGoal
