/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Paper</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How a chart is printed.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Paper#getSize <em>Size</em>}</li>
 *   <li>{@link org.ferrule.model.Paper#getOrientation <em>Orientation</em>}</li>
 *   <li>{@link org.ferrule.model.Paper#getPrimaryUnit <em>Primary Unit</em>}</li>
 *   <li>{@link org.ferrule.model.Paper#getShowNumbers <em>Show Numbers</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getPaper()
 * @model
 * @generated
 */
public interface Paper extends Element
{
	/**
	 * Returns the value of the '<em><b>Size</b></em>' attribute.
	 * The default value is <code>"A4"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.PaperSize}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The size of the paper.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Size</em>' attribute.
	 * @see org.ferrule.model.PaperSize
	 * @see #isSetSize()
	 * @see #unsetSize()
	 * @see #setSize(PaperSize)
	 * @see org.ferrule.model.ModelPackage#getPaper_Size()
	 * @model default="A4" unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Paper size'"
	 * @generated
	 */
	PaperSize getSize();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Paper#getSize <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Size</em>' attribute.
	 * @see org.ferrule.model.PaperSize
	 * @see #isSetSize()
	 * @see #unsetSize()
	 * @see #getSize()
	 * @generated
	 */
	void setSize(PaperSize value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Paper#getSize <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetSize()
	 * @see #getSize()
	 * @see #setSize(PaperSize)
	 * @generated
	 */
	void unsetSize();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Paper#getSize <em>Size</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Size</em>' attribute is set.
	 * @see #unsetSize()
	 * @see #getSize()
	 * @see #setSize(PaperSize)
	 * @generated
	 */
	boolean isSetSize();

	/**
	 * Returns the value of the '<em><b>Orientation</b></em>' attribute.
	 * The default value is <code>"landscape"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.Orientation}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The orientation of the paper.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Orientation</em>' attribute.
	 * @see org.ferrule.model.Orientation
	 * @see #isSetOrientation()
	 * @see #unsetOrientation()
	 * @see #setOrientation(Orientation)
	 * @see org.ferrule.model.ModelPackage#getPaper_Orientation()
	 * @model default="landscape" unsettable="true"
	 * @generated
	 */
	Orientation getOrientation();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Paper#getOrientation <em>Orientation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Orientation</em>' attribute.
	 * @see org.ferrule.model.Orientation
	 * @see #isSetOrientation()
	 * @see #unsetOrientation()
	 * @see #getOrientation()
	 * @generated
	 */
	void setOrientation(Orientation value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Paper#getOrientation <em>Orientation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetOrientation()
	 * @see #getOrientation()
	 * @see #setOrientation(Orientation)
	 * @generated
	 */
	void unsetOrientation();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Paper#getOrientation <em>Orientation</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Orientation</em>' attribute is set.
	 * @see #unsetOrientation()
	 * @see #getOrientation()
	 * @see #setOrientation(Orientation)
	 * @generated
	 */
	boolean isSetOrientation();

	/**
	 * Returns the value of the '<em><b>Primary Unit</b></em>' attribute.
	 * The default value is <code>"mm"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.PrimaryUnit}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The unit that comes first.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Primary Unit</em>' attribute.
	 * @see org.ferrule.model.PrimaryUnit
	 * @see #isSetPrimaryUnit()
	 * @see #unsetPrimaryUnit()
	 * @see #setPrimaryUnit(PrimaryUnit)
	 * @see org.ferrule.model.ModelPackage#getPaper_PrimaryUnit()
	 * @model default="mm" unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Unit that comes first'"
	 * @generated
	 */
	PrimaryUnit getPrimaryUnit();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Paper#getPrimaryUnit <em>Primary Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Primary Unit</em>' attribute.
	 * @see org.ferrule.model.PrimaryUnit
	 * @see #isSetPrimaryUnit()
	 * @see #unsetPrimaryUnit()
	 * @see #getPrimaryUnit()
	 * @generated
	 */
	void setPrimaryUnit(PrimaryUnit value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Paper#getPrimaryUnit <em>Primary Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetPrimaryUnit()
	 * @see #getPrimaryUnit()
	 * @see #setPrimaryUnit(PrimaryUnit)
	 * @generated
	 */
	void unsetPrimaryUnit();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Paper#getPrimaryUnit <em>Primary Unit</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Primary Unit</em>' attribute is set.
	 * @see #unsetPrimaryUnit()
	 * @see #getPrimaryUnit()
	 * @see #setPrimaryUnit(PrimaryUnit)
	 * @generated
	 */
	boolean isSetPrimaryUnit();

	/**
	 * Returns the value of the '<em><b>Show Numbers</b></em>' attribute.
	 * The default value is <code>"worst"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.ShownNumbers}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which clearance stands in the cells.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Show Numbers</em>' attribute.
	 * @see org.ferrule.model.ShownNumbers
	 * @see #isSetShowNumbers()
	 * @see #unsetShowNumbers()
	 * @see #setShowNumbers(ShownNumbers)
	 * @see org.ferrule.model.ModelPackage#getPaper_ShowNumbers()
	 * @model default="worst" unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Numbers in the cells'"
	 * @generated
	 */
	ShownNumbers getShowNumbers();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Paper#getShowNumbers <em>Show Numbers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Show Numbers</em>' attribute.
	 * @see org.ferrule.model.ShownNumbers
	 * @see #isSetShowNumbers()
	 * @see #unsetShowNumbers()
	 * @see #getShowNumbers()
	 * @generated
	 */
	void setShowNumbers(ShownNumbers value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Paper#getShowNumbers <em>Show Numbers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetShowNumbers()
	 * @see #getShowNumbers()
	 * @see #setShowNumbers(ShownNumbers)
	 * @generated
	 */
	void unsetShowNumbers();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Paper#getShowNumbers <em>Show Numbers</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Show Numbers</em>' attribute is set.
	 * @see #unsetShowNumbers()
	 * @see #getShowNumbers()
	 * @see #setShowNumbers(ShownNumbers)
	 * @generated
	 */
	boolean isSetShowNumbers();

} // Paper
