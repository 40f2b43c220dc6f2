/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Shaft Section</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A stretch of the shaft between two stations measured from the distal tip. Its cross-section is a circle (od), a stadium (oval) or a rigid set of discs.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.ShaftSection#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.ShaftSection#getFrom <em>From</em>}</li>
 *   <li>{@link org.ferrule.model.ShaftSection#getTo <em>To</em>}</li>
 *   <li>{@link org.ferrule.model.ShaftSection#getOd <em>Od</em>}</li>
 *   <li>{@link org.ferrule.model.ShaftSection#getOdProximal <em>Od Proximal</em>}</li>
 *   <li>{@link org.ferrule.model.ShaftSection#getOdAfter <em>Od After</em>}</li>
 *   <li>{@link org.ferrule.model.ShaftSection#getOdAfterProximal <em>Od After Proximal</em>}</li>
 *   <li>{@link org.ferrule.model.ShaftSection#getOval <em>Oval</em>}</li>
 *   <li>{@link org.ferrule.model.ShaftSection#getDiscs <em>Discs</em>}</li>
 *   <li>{@link org.ferrule.model.ShaftSection#isRigid <em>Rigid</em>}</li>
 *   <li>{@link org.ferrule.model.ShaftSection#getStiffness <em>Stiffness</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getShaftSection()
 * @model
 * @generated
 */
public interface ShaftSection extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name of the section; unique in its device. A device's section refines the line's section of the same name.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.ferrule.model.ModelPackage#getShaftSection_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ShaftSection#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The station of its distal end from the distal tip (mm, cm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(Dimension)
	 * @see org.ferrule.model.ModelPackage#getShaftSection_From()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='STATION' label='From station'"
	 * @generated
	 */
	Dimension getFrom();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ShaftSection#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(Dimension value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The station of its proximal end from the distal tip (mm, cm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see #setTo(Dimension)
	 * @see org.ferrule.model.ModelPackage#getShaftSection_To()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='STATION' label='To station'"
	 * @generated
	 */
	Dimension getTo();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ShaftSection#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(Dimension value);

	/**
	 * Returns the value of the '<em><b>Od</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The outer diameter at its distal end; the crossing profile where the section is a folded balloon or a crimped stent (mm, in or Fr).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Od</em>' attribute.
	 * @see #setOd(Dimension)
	 * @see org.ferrule.model.ModelPackage#getShaftSection_Od()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='OUTER_DIAMETER' label='Outer diameter'"
	 * @generated
	 */
	Dimension getOd();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ShaftSection#getOd <em>Od</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Od</em>' attribute.
	 * @see #getOd()
	 * @generated
	 */
	void setOd(Dimension value);

	/**
	 * Returns the value of the '<em><b>Od Proximal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The outer diameter at its proximal end, where the section tapers; otherwise od (mm, in or Fr).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Od Proximal</em>' attribute.
	 * @see #setOdProximal(Dimension)
	 * @see org.ferrule.model.ModelPackage#getShaftSection_OdProximal()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='OUTER_DIAMETER' label='Outer diameter, proximal end'"
	 * @generated
	 */
	Dimension getOdProximal();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ShaftSection#getOdProximal <em>Od Proximal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Od Proximal</em>' attribute.
	 * @see #getOdProximal()
	 * @generated
	 */
	void setOdProximal(Dimension value);

	/**
	 * Returns the value of the '<em><b>Od After</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The outer diameter at its distal end after use, such as the re-wrapped profile of a balloon (mm, in or Fr).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Od After</em>' attribute.
	 * @see #setOdAfter(Dimension)
	 * @see org.ferrule.model.ModelPackage#getShaftSection_OdAfter()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='OUTER_DIAMETER' label='Outer diameter after use'"
	 * @generated
	 */
	Dimension getOdAfter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ShaftSection#getOdAfter <em>Od After</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Od After</em>' attribute.
	 * @see #getOdAfter()
	 * @generated
	 */
	void setOdAfter(Dimension value);

	/**
	 * Returns the value of the '<em><b>Od After Proximal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The outer diameter at its proximal end after use; otherwise odAfter (mm, in or Fr).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Od After Proximal</em>' attribute.
	 * @see #setOdAfterProximal(Dimension)
	 * @see org.ferrule.model.ModelPackage#getShaftSection_OdAfterProximal()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='OUTER_DIAMETER' label='Outer diameter after use, proximal end'"
	 * @generated
	 */
	Dimension getOdAfterProximal();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ShaftSection#getOdAfterProximal <em>Od After Proximal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Od After Proximal</em>' attribute.
	 * @see #getOdAfterProximal()
	 * @generated
	 */
	void setOdAfterProximal(Dimension value);

	/**
	 * Returns the value of the '<em><b>Oval</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The cross-section as a stadium, instead of od.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Oval</em>' containment reference.
	 * @see #setOval(Oval)
	 * @see org.ferrule.model.ModelPackage#getShaftSection_Oval()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Oval cross-section'"
	 * @generated
	 */
	Oval getOval();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ShaftSection#getOval <em>Oval</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Oval</em>' containment reference.
	 * @see #getOval()
	 * @generated
	 */
	void setOval(Oval value);

	/**
	 * Returns the value of the '<em><b>Discs</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Disc}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The cross-section as a rigid set of discs, instead of od.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Discs</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getShaftSection_Discs()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Discs of the cross-section'"
	 * @generated
	 */
	EList<Disc> getDiscs();

	/**
	 * Returns the value of the '<em><b>Rigid</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the section cannot bend.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rigid</em>' attribute.
	 * @see #setRigid(boolean)
	 * @see org.ferrule.model.ModelPackage#getShaftSection_Rigid()
	 * @model
	 * @generated
	 */
	boolean isRigid();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ShaftSection#isRigid <em>Rigid</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rigid</em>' attribute.
	 * @see #isRigid()
	 * @generated
	 */
	void setRigid(boolean value);

	/**
	 * Returns the value of the '<em><b>Stiffness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The bending stiffness as printed, with its unit, such as 151 N mm2.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stiffness</em>' attribute.
	 * @see #setStiffness(String)
	 * @see org.ferrule.model.ModelPackage#getShaftSection_Stiffness()
	 * @model
	 * @generated
	 */
	String getStiffness();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ShaftSection#getStiffness <em>Stiffness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stiffness</em>' attribute.
	 * @see #getStiffness()
	 * @generated
	 */
	void setStiffness(String value);

} // ShaftSection
